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
  mount(at, 'readTrials', readTrials);
  mount(at, 'listMail', listMail);
};
