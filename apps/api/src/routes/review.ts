import { offerProgramme } from '@ballfirst/services/practice/offer-programme';
import { chooseDiagnosis } from '@ballfirst/services/review/choose-diagnosis';
import { correctReply } from '@ballfirst/services/review/correct-reply';
import { measureMarks } from '@ballfirst/services/review/measure-marks';
import { openReview } from '@ballfirst/services/review/open-review';
import { readDiagnosis } from '@ballfirst/services/review/read-diagnosis';
import { readMarks } from '@ballfirst/services/review/read-marks';
import { readStudentSet } from '@ballfirst/services/review/read-student-set';
import { saveMarks } from '@ballfirst/services/review/save-marks';
import { saveReply } from '@ballfirst/services/review/save-reply';
import { sendReply } from '@ballfirst/services/review/send-reply';
import { undoReply } from '@ballfirst/services/review/undo-reply';
import { type Mounting, mount } from '../door/mount.ts';

export const reviewRoutes = (at: Mounting): void => {
  mount(at, 'openReview', openReview);
  mount(at, 'readMarks', readMarks, (it) => it.version);
  mount(at, 'saveMarks', saveMarks, (it) => it.marking.version);
  mount(at, 'measureMarks', measureMarks);
  mount(at, 'readStudentSet', readStudentSet);
  mount(at, 'chooseDiagnosis', chooseDiagnosis);
  mount(at, 'readDiagnosis', readDiagnosis);
  mount(at, 'offerProgramme', offerProgramme);
  mount(at, 'saveReply', saveReply, (it) => it.version);
  mount(at, 'sendReply', sendReply, (it) => it.version);
  mount(at, 'undoReply', undoReply, (it) => it.version);
  mount(at, 'correctReply', correctReply, (it) => it.version);
};
