import { answerBack } from '@ballfirst/services/asking/answer-back';
import { askBack } from '@ballfirst/services/asking/ask-back';
import { askToJoin } from '@ballfirst/services/asking/ask-to-join';
import { readOwnTrial } from '@ballfirst/services/asking/read-own-trial';
import { logPractice } from '@ballfirst/services/practice/log-practice';
import { markReplyRead } from '@ballfirst/services/practice/mark-reply-read';
import { readHome } from '@ballfirst/services/practice/read-home';
import { readProgramme } from '@ballfirst/services/practice/read-programme';
import { readReply } from '@ballfirst/services/practice/read-reply';
import { readMeans } from '@ballfirst/services/students/read-means';
import { saveMeans } from '@ballfirst/services/students/save-means';
import { type Mounting, mount } from '../door/mount.ts';

export const practiceRoutes = (at: Mounting): void => {
  mount(at, 'readHome', readHome);
  mount(at, 'readReply', readReply);
  mount(at, 'markReplyRead', markReplyRead);
  mount(at, 'readProgramme', readProgramme);
  mount(at, 'logPractice', logPractice);
  mount(at, 'askBack', askBack);
  mount(at, 'answerBack', answerBack);
  mount(at, 'readOwnTrial', readOwnTrial);
  mount(at, 'askToJoin', askToJoin);
  mount(at, 'readMeans', readMeans);
  mount(at, 'saveMeans', saveMeans);
};
