import { randomUUID } from 'node:crypto';
import { operations } from '@ballfirst/contracts/http/operations';
import type { Operation } from '@ballfirst/contracts/operation';
import { withAcademy } from '@ballfirst/db/with-academy';
import {
  createAcademy,
  createClip,
  createMembership,
  createStudent,
  createSubmission,
} from '@ballfirst/testing/factories';
import { createProgramme, createReply } from '@ballfirst/testing/practice-factories';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cookieOf } from '../testing/cookie-of.ts';
import { type Door, openDoor } from '../testing/open-door.ts';
import { mayUse } from './may-use.ts';

type Ids = {
  submissions: string;
  clips: string;
  students: string;
  replies: string;
  programmes: string;
  staff: string;
  concerns: string;
  phrases: string;
  'starting-points': string;
  clipId: string;
};
type Asker = { cookie: string | null; role: 'student' | 'coach' | 'manager' | null };

const now = new Date('2026-03-10T09:00:00Z');
let database: TestDatabase;
let door: Door;
let ids: Ids;
const askers: Record<string, Asker> = {};

const membersOf = async (academyId: string, mark: string): Promise<void> => {
  for (const role of ['coach', 'manager'] as const) {
    const member = await createMembership(database.db, { academyId, role, name: role });
    askers[`${role} ${mark}`] = { role, cookie: await cookieOf(door, member) };
  }
  const member = await createMembership(database.db, { academyId, role: 'student', name: 'student' });
  await createStudent(database.db, { academyId, membershipId: member.id });
  askers[`student ${mark}`] = { role: 'student', cookie: await cookieOf(door, member) };
};

beforeAll(async () => {
  database = await testDatabase();
  door = await openDoor(database.db, { now, databaseUrl: database.appUrl });
  const { id: academyId } = await createAcademy(database.db);
  const { id: studentId } = await createStudent(database.db, { academyId });
  const submission = await createSubmission(database.db, { academyId, studentId });
  const clip = await createClip(database.db, { academyId, studentId, submissionId: submission.id });
  const programme = await createProgramme(database.db, { academyId, studentId, submissionId: submission.id });
  const reply = await createReply(database.db, programme);
  const coach = await createMembership(database.db, { academyId, role: 'coach', name: 'a coach' });
  const concern = await withAcademy(database.db, academyId, (tx) =>
    tx.concern.create({
      data: {
        ...{ academyId, id: randomUUID(), studentId, kind: 'stuck', subjectId: programme.id, pain: 'none' },
        ...{ words: '', status: 'waiting', raisedAt: now, answerBy: now, priorityKey: now },
        ...{ reasons: [], version: 1 },
      },
    }),
  );
  const kept = { phrases: randomUUID(), 'starting-points': randomUUID() };
  await withAcademy(database.db, academyId, async (tx) => {
    const at = { academyId, version: 1, at: now };
    const phrase = { about: 'a', text: 't', owner: null };
    await tx.libraryItem.create({ data: { ...at, kind: 'phrase', key: kept.phrases, content: phrase } });
    await tx.libraryItem.create({
      data: { ...at, kind: 'starting-point', key: kept['starting-points'], content: {} },
    });
  });
  ids = {
    submissions: submission.id,
    clips: clip.id,
    students: studentId,
    replies: reply.id,
    programmes: programme.id,
    staff: coach.id,
    concerns: concern.id,
    ...kept,
    clipId: clip.id,
  };
  askers['signed out'] = { role: null, cookie: null };
  await membersOf(academyId, 'of this academy');
  await membersOf((await createAcademy(database.db)).id, 'of another academy');
});
afterAll(async () => {
  await door.close();
  await database.close();
});

const tally = {
  balls: 10,
  solid: 4,
  fat: 6,
  thin: 0,
  topped: 0,
  heel: 0,
  toe: 0,
  shank: 0,
  sky: 0,
  counted: true,
};
const swing = { club: '8-iron', lie: 'mat', tally, startLine: 'straight', curve: 'none', typical: 'usual' };
/** A well-formed body for each operation that takes one: whoever is refused is refused for what they are. */
const bodies = (): Record<string, unknown> => ({
  signIn: { email: 'nobody@example.test', password: 'x' },
  signOut: { everywhere: false },
  chooseAcademy: { academyId: randomUUID() },
  sendSubmission: { ...swing, clipIds: [ids.clipId], note: '', pain: 'none', painNote: '', checkInId: null },
  correctSubmission: { club: 'wedge' },
  addClip: { clipId: ids.clipId },
  putGripPhoto: { photoId: ids.clipId },
  askToFilmAgain: { reason: 'too-dark' },
  saveMarks: { marks: [], observations: [] },
  measureMarks: {
    setting: { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' },
    picture: { widthPx: 720, heightPx: 1280, frameTimesS: [0, 0.01] },
    ...{ fault: 'fat', marks: [], observations: [] },
  },
  chooseDiagnosis: { fault: 'fat', cause: 'hang-back', setUpTicks: [] },
  savePhrase: { about: 'fat', text: 'Brush the grass.', whose: 'own' },
  saveReply: { words: '', cause: null, setUpTicks: [], frames: [], plan: null },
  correctReply: { words: 'Put right.' },
  keepModelSwing: { name: 'A full swing', permission: 'Allowed in writing.', permittedOn: '2026-03-01' },
  saveTalkThrough: {
    ...{ clipId: ids.clipId, durationMs: 900, sound: 'GkXfow==', captions: [] },
    track: [{ atMs: 0, frame: 0, times: 1, x: 0, y: 0, point: null }],
  },
  captionTalkThrough: { captions: [] },
  logPractice: { rung: 'rehearsal', balls: 10, clean: 5, filmed: false, pain: 'none' },
  extendTrial: { days: 7, reason: 'was ill' },
  changeStanding: { to: 'paid', reason: 'asked' },
  askBack: { words: 'Where do I look?' },
  answerBack: { words: 'At the ball.' },
  handOverSubmission: { to: ids.staff, why: 'away' },
  claimNext: { fault: null },
  closeConcern: { outcome: 'spoke' },
  chooseReminders: { reminders: true },
  setReminderRule: { on: true },
  setLearning: { on: true },
  inviteStaff: { name: 'Ann', email: 'ann@example.test', role: 'coach' },
  askGuardian: { name: 'Cy Ash', relation: 'parent', email: 'cy@example.test' },
  saveMeans: {
    ...{ usualMiss: 'fat', daysPerWeek: 2, minutesPerDay: 20, place: 'mat', goal: null },
    ...{ body: null, bodyAgreed: false },
  },
  saveCoachNote: { words: 'Stiff back.' },
  noteLesson: { localDate: '2026-03-09', words: 'Grip.' },
  noteLineTest: { startsMm: [-40, 0, 10] },
  keepTeachingClip: { title: 'The hips', url: 'https://films.example/hips', words: 'How they turn.' },
  joinAcademy: {
    ...{ name: 'Ann', email: 'ann@example.test', password: 'brush the grass', hand: 'right' },
    ...{ ageGroup: 'adult', zone: 'UTC', guardian: null },
  },
});

const addressOf = (it: Operation, foreign: Ids): string =>
  it.path
    .replace('{academy}', 'no-such-academy')
    .replace('{token}', 'x'.repeat(43))
    .replace('{kind}', 'practice')
    .replace('{cause}', 'hang-back')
    .replace('{clipId}', foreign.clipId)
    .replace('{id}', foreign[it.path.split('/')[2] as keyof Ids] ?? '');

const ask = (it: Operation, asker: Asker, with_: Ids) => {
  const payload = bodies()[it.id];
  return door.app.inject({
    method: it.method,
    url: addressOf(it, with_),
    headers: {
      ...(asker.cookie ? { cookie: asker.cookie } : {}),
      ...(it.creates ? { 'idempotency-key': randomUUID() } : {}),
      ...(it.guarded ? { 'if-match': '"0"' } : {}),
    },
    ...(payload === undefined ? {} : { payload: payload as object }),
  });
};

const missing = (): Ids =>
  ({ ...Object.fromEntries(Object.keys(ids).map((key) => [key, randomUUID()])) }) as Ids;

const table: readonly Operation[] = Object.values(operations);
const withId = table.filter((it) => it.path.includes('{id}'));
const without = ({ requestId: _, ...problem }: Record<string, unknown>): unknown => problem;

it('has an operation with an id in it for each kind of thing', () => {
  expect(new Set(withId.map((it) => it.path.split('/')[2]))).toEqual(
    new Set([
      'submissions',
      'clips',
      'students',
      'replies',
      'programmes',
      'staff',
      'concerns',
      'phrases',
      'starting-points',
    ]),
  );
});

describe.each(table.filter((it) => !it.who.includes('anyone')))('$id', (it_) => {
  it('asks who is there', async () => {
    const answer = await ask(it_, { role: null, cookie: null }, ids);
    expect(answer.statusCode).toBe(401);
    expect(answer.json()).toMatchObject({ code: 'not-signed-in', status: 401 });
    expect(answer.headers['content-type']).toBe('application/problem+json');
  });

  it('is for its roles and for no other', async () => {
    for (const [name, asker] of Object.entries(askers)) {
      if (asker.role === null || mayUse(it_.who, asker.role)) continue;
      const answer = await ask(it_, asker, ids);
      expect([name, answer.statusCode, answer.json().code]).toEqual([name, 403, 'not-allowed']);
    }
  });
});

describe.each(withId)('$id', (it_) => {
  it('answers what is another academy’s, another student’s and what never was with one 404', async () => {
    const foreigners = Object.entries(askers).filter(
      ([name, { role }]) =>
        role !== null && mayUse(it_.who, role) && (name.endsWith('of another academy') || role === 'student'),
    );
    expect(foreigners.length).toBeGreaterThan(0);
    for (const [name, asker] of foreigners) {
      const foreign = await ask(it_, asker, ids);
      const never = await ask(it_, asker, missing());
      expect([name, foreign.statusCode, never.statusCode]).toEqual([name, 404, 404]);
      expect(without(foreign.json())).toEqual(without(never.json()));
      const { 'x-request-id': _f, date: _fd, ...headers } = foreign.headers;
      const { 'x-request-id': _n, date: _nd, ...others } = never.headers;
      expect(headers).toEqual(others);
    }
  });

  it('answers an id that is none with the same 404', async () => {
    const asker = Object.values(askers).find(({ role }) => role !== null && mayUse(it_.who, role));
    const no = 'no-id';
    const answer = await ask(it_, asker ?? { role: null, cookie: null }, {
      ...{
        submissions: no,
        clips: no,
        students: no,
        replies: no,
        programmes: no,
        staff: no,
        concerns: no,
        phrases: no,
        'starting-points': no,
        clipId: no,
      },
    });
    expect([answer.statusCode, answer.json().code]).toEqual([404, 'not-found']);
  });
});

describe('an unknown address', () => {
  it.each(['/api', '/api/', '/api/nothing', '/api/inbox/x/y', '/media/x', '/uploads/a/b'])(
    '%s: 404',
    async (url) => {
      for (const method of ['GET', 'POST', 'DELETE'] as const) {
        const answer = await door.app.inject({ method, url });
        expect([method, answer.statusCode, answer.json().code]).toEqual([method, 404, 'not-found']);
        expect(answer.headers['content-type']).toBe('application/problem+json');
      }
    },
  );

  it('is not the site’s to write to', async () => {
    const answer = await door.app.inject({ method: 'POST', url: '/home' });
    expect([answer.statusCode, answer.json().code]).toEqual([404, 'not-found']);
  });
});
