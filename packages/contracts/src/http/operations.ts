import * as about from './about.ts';
import * as accounts from './accounts.ts';
import * as asking from './asking.ts';
import * as coaches from './coaches.ts';
import * as compare from './compare.ts';
import * as consent from './consent.ts';
import * as fatRisk from './fat-risk.ts';
import * as gripPhoto from './grip-photo.ts';
import * as identity from './identity.ts';
import * as inbox from './inbox.ts';
import * as learning from './learning.ts';
import * as lineTests from './line-tests.ts';
import * as live from './live.ts';
import * as means from './means.ts';
import * as phrases from './phrases.ts';
import * as practice from './practice.ts';
import * as programmeOffer from './programme-offer.ts';
import * as reminders from './reminders.ts';
import * as review from './review.ts';
import * as staff from './staff.ts';
import * as startingPoints from './starting-points.ts';
import * as students from './students.ts';
import * as submissions from './submissions.ts';
import * as talkThrough from './talk-through.ts';
import * as teaching from './teaching.ts';
import * as thenAndNow from './then-and-now.ts';

const { signIn, signOut, readMe, chooseAcademy, readAcademy, joinAcademy } = identity;
const { readGuardian, askGuardian, readConsent, giveConsent, withdrawConsent, recordWithdrawal } = consent;
const { readMeans, saveMeans } = means;
const { sendSubmission, listSubmissions, readSubmission, correctSubmission, addClip, readClip } = submissions;
const { readGripPhoto, readGripPhotoOfSwing, putGripPhoto } = gripPhoto;
const { claimSubmission, releaseSubmission, handOverSubmission, acknowledgePain, askToFilmAgain } =
  submissions;
const { readInbox, readInboxLoad, listCoaches, claimNext } = inbox;
const { claimConcern, releaseConcern, closeConcern } = inbox;
const { followLive } = live;
const { listComparable, listModelSwings, keepModelSwing, endModelSwing } = compare;
const { readTalkThrough, saveTalkThrough, captionTalkThrough, dropTalkThrough } = talkThrough;
const {
  openReview,
  readMarks,
  saveMarks,
  measureMarks,
  chooseDiagnosis,
  readDiagnosis,
  showOrder,
  saveReply,
  sendReply,
  undoReply,
  correctReply,
} = review;
const { readStudentSet } = fatRisk;
const { readHome, readReply, markReplyRead, sayReplyRead, readProgramme, logPractice } = practice;
const { listStudents, readStudent, changeStanding, extendTrial, readTrials, listMail, listDrills } = students;
const { askBack, answerBack, readOwnTrial, askToJoin } = asking;
const { offerProgramme } = programmeOffer;
const { listPhrases, savePhrase, removePhrase } = phrases;
const { keepStartingPoint, listStartingPoints, removeStartingPoint } = startingPoints;
const { readCoaches } = coaches;
const { askReset, resetPassword, readInvitation, acceptInvitation } = accounts;
const { stopReminders, readReminders, chooseReminders, readReminderRules, setReminderRule } = reminders;
const { readLearning, setLearning, resetLearning } = learning;
const { readAbout, saveCoachNote, noteLesson } = about;
const { listLineTests, noteLineTest } = lineTests;
const { readFaultsLately, listTeachingClips, keepTeachingClip, removeTeachingClip } = teaching;
const { readThenAndNow } = thenAndNow;
const { listStaff, inviteStaff, revokeInvitation, endStaff } = staff;

/** Every operation of the API, by id. */
export const operations = {
  signIn,
  signOut,
  readMe,
  chooseAcademy,
  readAcademy,
  joinAcademy,
  askReset,
  resetPassword,
  readInvitation,
  acceptInvitation,
  readGuardian,
  askGuardian,
  readConsent,
  giveConsent,
  withdrawConsent,
  recordWithdrawal,
  readMeans,
  saveMeans,
  sendSubmission,
  listSubmissions,
  readSubmission,
  correctSubmission,
  addClip,
  readClip,
  readGripPhoto,
  readGripPhotoOfSwing,
  putGripPhoto,
  readInbox,
  readInboxLoad,
  listCoaches,
  claimNext,
  claimSubmission,
  releaseSubmission,
  handOverSubmission,
  claimConcern,
  releaseConcern,
  closeConcern,
  followLive,
  acknowledgePain,
  askToFilmAgain,
  openReview,
  readMarks,
  saveMarks,
  measureMarks,
  readStudentSet,
  chooseDiagnosis,
  readDiagnosis,
  showOrder,
  saveReply,
  sendReply,
  undoReply,
  correctReply,
  listComparable,
  listModelSwings,
  keepModelSwing,
  endModelSwing,
  readTalkThrough,
  saveTalkThrough,
  captionTalkThrough,
  dropTalkThrough,
  readHome,
  readReply,
  markReplyRead,
  sayReplyRead,
  askBack,
  answerBack,
  readOwnTrial,
  askToJoin,
  readProgramme,
  logPractice,
  listStudents,
  readStudent,
  changeStanding,
  extendTrial,
  readAbout,
  saveCoachNote,
  noteLesson,
  listLineTests,
  noteLineTest,
  readThenAndNow,
  readFaultsLately,
  listTeachingClips,
  keepTeachingClip,
  removeTeachingClip,
  readTrials,
  listMail,
  listDrills,
  offerProgramme,
  listPhrases,
  savePhrase,
  removePhrase,
  keepStartingPoint,
  listStartingPoints,
  removeStartingPoint,
  stopReminders,
  readReminders,
  chooseReminders,
  readReminderRules,
  setReminderRule,
  readLearning,
  setLearning,
  resetLearning,
  readCoaches,
  listStaff,
  inviteStaff,
  revokeInvitation,
  endStaff,
} as const;
export type OperationId = keyof typeof operations;
