import { operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff, actingStudent } from '@ballfirst/testing/acting';
import {
  createClip,
  createMembership,
  createStudent,
  createSubmission,
  factoryNow,
} from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { noteLesson } from './about/note-lesson.ts';
import { readAbout } from './about/read-about.ts';
import { saveCoachNote } from './about/save-coach-note.ts';
import { answerBack } from './asking/answer-back.ts';
import { askBack } from './asking/ask-back.ts';
import { finishClip } from './clips/finish-clip.ts';
import { readClipForMedia } from './clips/read-clip-for-media.ts';
import { readUpload } from './clips/read-upload.ts';
import { endModelSwing } from './compare/end-model-swing.ts';
import { keepModelSwing } from './compare/keep-model-swing.ts';
import { listComparable } from './compare/list-comparable.ts';
import { recordWithdrawal } from './consent/record-withdrawal.ts';
import type { Context } from './context.ts';
import { putGripPhoto } from './grip-photo/put-grip-photo.ts';
import { readGripPhoto } from './grip-photo/read-grip-photo.ts';
import { readGripPhotoOfSwing } from './grip-photo/read-grip-photo-of-swing.ts';
import { acknowledgePain } from './inbox/acknowledge-pain.ts';
import { askToFilmAgain } from './inbox/ask-to-film-again.ts';
import { claimConcern } from './inbox/claim-concern.ts';
import { claimSubmission } from './inbox/claim-submission.ts';
import { closeConcern } from './inbox/close-concern.ts';
import { handOverSubmission } from './inbox/hand-over-submission.ts';
import { releaseConcern } from './inbox/release-concern.ts';
import { releaseSubmission } from './inbox/release-submission.ts';
import { keepStartingPoint } from './library/keep-starting-point.ts';
import { removePhrase } from './library/remove-phrase.ts';
import { removeStartingPoint } from './library/remove-starting-point.ts';
import { listLineTests } from './line-tests/list-line-tests.ts';
import { noteLineTest } from './line-tests/note-line-test.ts';
import { logPractice } from './practice/log-practice.ts';
import { markReplyRead } from './practice/mark-reply-read.ts';
import { offerProgramme } from './practice/offer-programme.ts';
import { readProgramme } from './practice/read-programme.ts';
import { readReply } from './practice/read-reply.ts';
import { sayReplyRead } from './practice/say-reply-read.ts';
import { chooseDiagnosis } from './review/choose-diagnosis.ts';
import { correctReply } from './review/correct-reply.ts';
import { openReview } from './review/open-review.ts';
import { readDiagnosis } from './review/read-diagnosis.ts';
import { readMarks } from './review/read-marks.ts';
import { readStudentSet } from './review/read-student-set.ts';
import { saveMarks } from './review/save-marks.ts';
import { saveReply } from './review/save-reply.ts';
import { sendReply } from './review/send-reply.ts';
import { showOrder } from './review/show-order.ts';
import { undoReply } from './review/undo-reply.ts';
import { endStaff } from './staff/end-staff.ts';
import { revokeInvitation } from './staff/revoke-invitation.ts';
import { changeStanding } from './students/change-standing.ts';
import { extendTrial } from './students/extend-trial.ts';
import { readStudent } from './students/read-student.ts';
import { addClip } from './submissions/add-clip.ts';
import { correctSubmission } from './submissions/correct-submission.ts';
import { listSubmissions } from './submissions/list-submissions.ts';
import { readClip } from './submissions/read-clip.ts';
import { readSubmission } from './submissions/read-submission.ts';
import { captionTalkThrough } from './talk-through/caption-talk-through.ts';
import { dropTalkThrough } from './talk-through/drop-talk-through.ts';
import { readTalkThrough } from './talk-through/read-talk-through.ts';
import { saveTalkThrough } from './talk-through/save-talk-through.ts';
import { readThenAndNow } from './then-and-now/read-then-and-now.ts';

type Ids = {
  submission: string;
  clip: string;
  student: string;
  reply: string;
  programme: string;
  membership: string;
  concern: string;
  phrase: string;
  start: string;
};
type Asks = (ctx: Context, ids: Ids) => Promise<unknown>;

const reply = { version: 0, words: '', cause: null, setUpTicks: [], frames: [], plan: null };
const entry = { rung: 'rehearsal', balls: 10, clean: 7, filmed: false, pain: 'none' as const };
const limit = 20;

/** Every operation whose path holds an id, by who may ask it. */
const asked: Record<string, Asks> = {
  readSubmission: (ctx, ids) => readSubmission({ ctx, input: { id: ids.submission } }),
  addClip: (ctx, ids) => addClip({ ctx, input: { id: ids.submission, clipId: ids.clip } }),
  readClip: (ctx, ids) => readClip({ ctx, input: { id: ids.clip } }),
  readGripPhoto: (ctx, ids) => readGripPhoto({ ctx, input: { id: ids.clip } }),
  readGripPhotoOfSwing: (ctx, ids) => readGripPhotoOfSwing({ ctx, input: { id: ids.submission } }),
  putGripPhoto: (ctx, ids) => putGripPhoto({ ctx, input: { id: ids.submission, photoId: ids.clip } }),
  claimSubmission: (ctx, ids) => claimSubmission({ ctx, input: { id: ids.submission } }),
  releaseSubmission: (ctx, ids) => releaseSubmission({ ctx, input: { id: ids.submission } }),
  acknowledgePain: (ctx, ids) => acknowledgePain({ ctx, input: { id: ids.submission } }),
  askToFilmAgain: (ctx, ids) => askToFilmAgain({ ctx, input: { id: ids.submission, reason: 'too-dark' } }),
  openReview: (ctx, ids) => openReview({ ctx, input: { id: ids.submission } }),
  readMarks: (ctx, ids) => readMarks({ ctx, input: { id: ids.submission, clipId: ids.clip } }),
  readStudentSet: (ctx, ids) => readStudentSet({ ctx, input: { id: ids.submission } }),
  saveMarks: (ctx, ids) =>
    saveMarks({
      ctx,
      input: { id: ids.submission, clipId: ids.clip, version: 0, marks: [], observations: [] },
    }),
  chooseDiagnosis: (ctx, ids) =>
    chooseDiagnosis({
      ctx,
      input: { id: ids.submission, fault: 'fat', cause: 'hang-back', setUpTicks: [] },
    }),
  offerProgramme: (ctx, ids) => offerProgramme({ ctx, input: { id: ids.submission, cause: 'hang-back' } }),
  keepStartingPoint: (ctx, ids) => keepStartingPoint({ ctx, input: { id: ids.reply } }),
  removePhrase: (ctx, ids) => removePhrase({ ctx, input: { id: ids.phrase } }),
  removeStartingPoint: (ctx, ids) => removeStartingPoint({ ctx, input: { id: ids.start } }),
  readDiagnosis: (ctx, ids) => readDiagnosis({ ctx, input: { id: ids.submission } }),
  showOrder: (ctx, ids) => showOrder({ ctx, input: { id: ids.submission } }),
  saveReply: (ctx, ids) => saveReply({ ctx, input: { id: ids.submission, ...reply } }),
  sendReply: (ctx, ids) => sendReply({ ctx, input: { id: ids.submission } }),
  handOverSubmission: (ctx, ids) =>
    handOverSubmission({ ctx, input: { id: ids.submission, to: ids.membership, why: 'away' } }),
  claimConcern: (ctx, ids) => claimConcern({ ctx, input: { id: ids.concern } }),
  releaseConcern: (ctx, ids) => releaseConcern({ ctx, input: { id: ids.concern } }),
  closeConcern: (ctx, ids) => closeConcern({ ctx, input: { id: ids.concern, outcome: 'spoke' } }),
  recordWithdrawal: (ctx, ids) => recordWithdrawal({ ctx, input: { id: ids.student } }),
  correctSubmission: (ctx, ids) =>
    correctSubmission({ ctx, input: { id: ids.submission, version: 1, club: '7-iron' } }),
  undoReply: (ctx, ids) => undoReply({ ctx, input: { id: ids.submission } }),
  correctReply: (ctx, ids) => correctReply({ ctx, input: { id: ids.reply, words: 'So.', version: 1 } }),
  listComparable: (ctx, ids) => listComparable({ ctx, input: { id: ids.submission } }),
  keepModelSwing: (ctx, ids) =>
    keepModelSwing({
      ctx,
      input: { id: ids.clip, name: 'A', permission: 'Allowed in writing.', permittedOn: '2026-03-01' },
    }),
  endModelSwing: (ctx, ids) => endModelSwing({ ctx, input: { id: ids.clip } }),
  readTalkThrough: (ctx, ids) => readTalkThrough({ ctx, input: { id: ids.submission } }),
  saveTalkThrough: (ctx, ids) =>
    saveTalkThrough({
      ctx,
      input: {
        ...{ id: ids.submission, clipId: ids.clip, durationMs: 900, sound: 'GkXfow==', captions: [] },
        track: [{ atMs: 0, frame: 0, times: 1, x: 0, y: 0, point: null }],
      },
    }),
  captionTalkThrough: (ctx, ids) => captionTalkThrough({ ctx, input: { id: ids.submission, captions: [] } }),
  dropTalkThrough: (ctx, ids) => dropTalkThrough({ ctx, input: { id: ids.submission } }),
  askBack: (ctx, ids) => askBack({ ctx, input: { id: ids.reply, words: 'Why?' } }),
  answerBack: (ctx, ids) => answerBack({ ctx, input: { id: ids.reply, words: 'So.' } }),
  extendTrial: (ctx, ids) => extendTrial({ ctx, input: { id: ids.student, days: 7, reason: 'was ill' } }),
  revokeInvitation: (ctx, ids) => revokeInvitation({ ctx, input: { id: ids.programme } }),
  endStaff: (ctx, ids) => endStaff({ ctx, input: { id: ids.membership } }),
  readReply: (ctx, ids) => readReply({ ctx, input: { id: ids.reply } }),
  markReplyRead: (ctx, ids) => markReplyRead({ ctx, input: { id: ids.reply } }),
  sayReplyRead: (ctx, ids) => sayReplyRead({ ctx, input: { id: ids.reply } }),
  readProgramme: (ctx, ids) => readProgramme({ ctx, input: { id: ids.programme } }),
  logPractice: (ctx, ids) => logPractice({ ctx, input: { id: ids.programme, ...entry } }),
  readStudent: (ctx, ids) => readStudent({ ctx, input: { id: ids.student } }),
  readAbout: (ctx, ids) => readAbout({ ctx, input: { id: ids.student } }),
  saveCoachNote: (ctx, ids) =>
    saveCoachNote({ ctx, input: { id: ids.student, words: 'Stiff.', version: 0 } }),
  noteLesson: (ctx, ids) =>
    noteLesson({ ctx, input: { id: ids.student, localDate: '2026-03-09', words: 'Grip.' } }),
  listLineTests: (ctx, ids) => listLineTests({ ctx, input: { id: ids.student } }),
  noteLineTest: (ctx, ids) => noteLineTest({ ctx, input: { id: ids.student, startsMm: [-40, 0, 10] } }),
  readThenAndNow: (ctx, ids) => readThenAndNow({ ctx, input: { id: ids.submission } }),
  changeStanding: (ctx, ids) =>
    changeStanding({ ctx, input: { id: ids.student, to: 'paid', reason: 'asked' } }),
};
/** What takes an id in another place, and the doors of files. */
const besides: Record<string, { who: readonly string[]; ask: Asks }> = {
  'submissions of a student': {
    who: ['student', 'coach', 'manager'],
    ask: (ctx, ids) => listSubmissions({ ctx, input: { studentId: ids.student, limit } }),
  },
  'a media file': {
    who: ['student', 'coach', 'manager'],
    ask: (ctx, ids) => readClipForMedia({ ctx, input: { clipId: ids.clip, file: 'poster.jpg' } }),
  },
  'an upload': { who: ['student'], ask: (ctx, ids) => readUpload({ ctx, input: { clipId: ids.clip } }) },
  'the end of an upload': {
    who: ['student'],
    ask: (ctx, ids) => finishClip({ ctx, input: { clipId: ids.clip } }),
  },
};

const byId = Object.values(operations).filter((it: Operation) => it.path.includes('{id}'));
const rows = [
  ...byId.map(({ id, who }) => ({ id: id as string, who: who as readonly string[], ask: asked[id] })),
  ...Object.entries(besides).map(([id, row]) => ({ id, ...row })),
];

let test: TestDatabase;
let world: SystemWorld;
const made: { ours: Ids; foreign: Ids; missing: Ids } = {
  ours: {
    submission: '',
    clip: '',
    student: '',
    reply: '',
    programme: '',
    membership: '',
    concern: '',
    phrase: '',
    start: '',
  },
  foreign: {
    submission: '',
    clip: '',
    student: '',
    reply: '',
    programme: '',
    membership: '',
    concern: '',
    phrase: '',
    start: '',
  },
  missing: {
    submission: newId(),
    clip: newId(),
    student: newId(),
    reply: newId(),
    programme: newId(),
    membership: newId(),
    concern: newId(),
    phrase: newId(),
    start: newId(),
  },
};
const actors: Record<string, Context> = {};

const idsOf = async (): Promise<Ids & { academyId: string }> => {
  const student = await createStudent(test.db);
  const { academyId, id: studentId } = student;
  const { id: submissionId } = await createSubmission(test.db, { academyId, studentId });
  const clip = await createClip(test.db, { academyId, studentId, submissionId });
  const programme = await createProgramme(test.db, { academyId, studentId, submissionId });
  const sent = await createReply(test.db, programme);
  const coach = await createMembership(test.db, { academyId });
  const concern = newId();
  await withAcademy(test.db, academyId, (tx) =>
    tx.concern.create({
      data: {
        ...{ academyId, id: concern, studentId, kind: 'stuck', subjectId: programme.id, pain: 'none' },
        ...{ words: '', status: 'waiting', raisedAt: factoryNow, answerBy: factoryNow },
        ...{ priorityKey: factoryNow, reasons: [], version: 1 },
      },
    }),
  );
  const kept = { phrase: newId(), start: newId() };
  await withAcademy(test.db, academyId, async (tx) => {
    const row = { academyId, version: 1, at: factoryNow };
    const content = { about: 'a', text: 't', owner: null };
    await tx.libraryItem.create({ data: { ...row, kind: 'phrase', key: kept.phrase, content } });
    await tx.libraryItem.create({ data: { ...row, kind: 'starting-point', key: kept.start, content: {} } });
  });
  const ids = { submission: submissionId, clip: clip.id, student: studentId, ...kept };
  return { ...ids, reply: sent.id, programme: programme.id, membership: coach.id, concern, academyId };
};

beforeAll(async () => {
  test = await testDatabase();
  world = systemWorld(test.db, factoryNow);
  const { academyId, ...ours } = await idsOf();
  const { academyId: _, ...foreign } = await idsOf();
  Object.assign(made, { ours, foreign });
  actors.coach = actingStaff(world, await createMembership(test.db, { academyId }));
  actors.manager = actingStaff(world, await createMembership(test.db, { academyId, role: 'manager' }));
  // A student of the academy who owns none of it.
  actors.student = actingStudent(world, await createStudent(test.db, { academyId }));
});
afterAll(() => test.close());

const answerTo = async (role: string, ask: Asks | undefined, ids: Ids): Promise<unknown> => {
  const ctx = actors[role];
  if (ctx === undefined || ask === undefined) throw new Error('a row is missing');
  return ask(ctx, ids).then(
    () => 'answered',
    (error: unknown) => error,
  );
};

describe.each(rows)('$id', ({ who, ask }) => {
  it('has a row here', () => {
    expect(ask).toBeDefined();
  });

  it.each(['student', 'coach', 'manager'])(
    'answers a %s the same for a foreign and a missing id',
    async (role) => {
      const foreign = await answerTo(role, ask, made.foreign);
      const missing = await answerTo(role, ask, made.missing);
      expect(foreign).toEqual(missing);
      expect(foreign).toMatchObject({ code: who.includes(role) ? 'not-found' : 'not-allowed' });
    },
  );

  it('hides from a student what belongs to another one', async () => {
    const code = who.includes('student') ? 'not-found' : 'not-allowed';
    expect(await answerTo('student', ask, made.ours)).toMatchObject({ code });
  });
});
