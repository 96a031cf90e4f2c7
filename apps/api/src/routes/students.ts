import { noteLesson } from '@ballfirst/services/about/note-lesson';
import { readAbout } from '@ballfirst/services/about/read-about';
import { saveCoachNote } from '@ballfirst/services/about/save-coach-note';
import { recordWithdrawal } from '@ballfirst/services/consent/record-withdrawal';
import { changeStanding } from '@ballfirst/services/students/change-standing';
import { extendTrial } from '@ballfirst/services/students/extend-trial';
import { listMail } from '@ballfirst/services/students/list-mail';
import { listStudents } from '@ballfirst/services/students/list-students';
import { readStudent } from '@ballfirst/services/students/read-student';
import { readTrials } from '@ballfirst/services/students/read-trials';
import { type Mounting, mount } from '../door/mount.ts';

export const studentsRoutes = (at: Mounting): void => {
  mount(at, 'listStudents', listStudents);
  mount(at, 'readStudent', readStudent);
  mount(at, 'changeStanding', changeStanding);
  mount(at, 'extendTrial', extendTrial);
  mount(at, 'recordWithdrawal', recordWithdrawal);
  mount(at, 'readAbout', readAbout);
  mount(at, 'saveCoachNote', saveCoachNote, ({ version }) => version);
  mount(at, 'noteLesson', noteLesson);
  mount(at, 'readTrials', readTrials);
  mount(at, 'listMail', listMail);
};
