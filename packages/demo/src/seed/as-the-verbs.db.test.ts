import { createHash } from 'node:crypto';
import { Suggestion } from '@ballfirst/contracts/http/submissions';
import { academyBySlug } from '@ballfirst/db/crossings/academy-by-slug';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { beginPreparing } from '@ballfirst/services/clips/begin-preparing';
import { finishClip } from '@ballfirst/services/clips/finish-clip';
import { finishPreparing, type Outcome } from '@ballfirst/services/clips/finish-preparing';
import { startClip } from '@ballfirst/services/clips/start-clip';
import type { Resources } from '@ballfirst/services/context';
import { systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { gripSize } from '../golfer/grip-size.ts';
import { clipTruth } from '../golfer/kept-clips.ts';
import { type AcademyLine, academies } from './academies.ts';
import type { Member } from './at-time.ts';
import { clipRows, photoRows } from './clip-rows.ts';
import { membersOf } from './members.ts';
import { type Past, tellPast } from './past.ts';
import { peopleRows } from './people-rows.ts';
import { seedAcademy } from './seed-academy.ts';
import { writeRows } from './seed-people.ts';
import { seedStudent } from './seed-student.ts';
import type { StudentLine } from './student-line.ts';

/** What is written straight into the tables for speed stands there exactly as the verbs would have left it. */
const now = new Date('2026-11-25T10:20:00Z');
let test: TestDatabase;
let resources: Resources;
let manager: Member;
let academyId: string;
const academy = academies[0] as AcademyLine;

beforeAll(async () => {
  test = await testDatabase();
  ({ resources } = systemWorld(test.db, now).contextOf(newId()));
  const seeded = await seedAcademy(resources, academy, 'hash', now);
  academyId = seeded.academyId;
  manager = [...seeded.staff.values()].find(({ role }) => role === 'manager') as Member;
});
afterAll(() => test.close());

const uuid = /[\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-[\da-f]{12}/g;
/** Ids are new every time: each becomes its place in the order of meeting. */
const withoutIds = (rows: unknown): unknown => {
  const met = new Map<string, string>();
  const text = JSON.stringify(rows, (_, value) => (typeof value === 'bigint' ? String(value) : value));
  return JSON.parse(
    text.replaceAll(uuid, (id) => met.get(id) ?? met.set(id, `id ${met.size}`).get(id) ?? id),
  );
};

const rowsOfStudent = (key: string) =>
  withAcademy(test.db, academyId, async (tx) => {
    const membership = await tx.membership.findFirstOrThrow({
      where: { email: `${key}@quillmere.example` },
      include: { student: { include: { standings: { orderBy: { at: 'asc' } } } } },
    });
    const subject = `student:${membership.student?.id}`;
    const audit = await tx.auditEntry.findMany({ where: { subject }, orderBy: { at: 'asc' } });
    return withoutIds({ membership, audit });
  });

const people: readonly Omit<StudentLine, 'key'>[] = [
  { name: 'A', hand: 'left', ageGroup: 'senior', joinedDaysAgo: 9, zone: 'America/New_York' },
  { name: 'B', hand: 'right', ageGroup: 'adult', joinedDaysAgo: 52, trialEnds: true },
  {
    ...{ name: 'C', hand: 'right', ageGroup: 'adult', joinedDaysAgo: 80 },
    turns: [
      { daysAgo: 70, to: 'paid', reason: 'joined' },
      { daysAgo: 9, to: 'paused', reason: 'winter' },
    ],
  },
];

it.each(people)('a student of the demo stands as enrolled and moved by the verbs: $name', async (line) => {
  const front = await academyBySlug(test.db, { slug: academy.slug });
  if (front === null) throw new Error('There is no academy.');
  const given = { academyId, academy, front, manager, now };
  // One name draws one story: the same student twice, under two academies' worth of addresses.
  const key = `twin${line.name.toLowerCase()}`;
  const told = async (tell: (past: Past) => Promise<void>) => {
    await tellPast(resources, academyId, tell);
    return rowsOfStudent(key);
  };
  const ofVerbs = await told((past) =>
    seedStudent(past, { ...given, line: { key, ...line }, personId: newId() }),
  );
  await withAcademy(test.db, academyId, (tx) =>
    tx.membership.updateMany({
      where: { email: `${key}@quillmere.example` },
      data: { email: `${key}@elsewhere.example` },
    }),
  );
  const ofRows = await told((past) =>
    writeRows(past, [peopleRows({ ...given, line: { key, ...line }, personId: newId() })]),
  );
  expect(ofRows).toEqual(ofVerbs);
});

/** What preparing brings, read back from the row. */
const outcomeOf = (clip: ReturnType<typeof clipRows>['clip']): Outcome => {
  if (clip.refusal) return { kind: 'refused', refusal: clip.refusal };
  const { widthPx, heightPx, frames, fps, durationMs, sha256 } = clip;
  const suggestion = Suggestion.parse(clip.suggestion);
  if (!widthPx || !heightPx || !frames || !fps || !durationMs || !sha256) throw new Error('No picture.');
  return { kind: 'ready', widthPx, heightPx, frames, fps, durationMs, sha256, suggestion };
};

const rowsOfClip = (past: Past, id: string) =>
  Promise.all([
    past.tx.clip.findUniqueOrThrow({ where: { academyId_id: { academyId, id } } }),
    past.tx.auditEntry.findMany({
      where: { subject: `clip:${id}` },
      orderBy: [{ at: 'asc' }, { id: 'asc' }],
    }),
  ]).then(withoutIds);

it.each([undefined, 'too_long'])(
  'a clip stands as uploaded and prepared by the verbs: %s',
  async (refused) => {
    await tellPast(resources, academyId, async (past) => {
      const line: StudentLine = {
        key: `filmer${refused ?? ''}`,
        name: 'F',
        hand: 'right',
        ageGroup: 'adult',
        joinedDaysAgo: 3,
      };
      await writeRows(past, [peopleRows({ academyId, academy, manager, line, personId: newId(), now })]);
    });
    const members = await membersOf(resources, { id: academyId, slug: academy.slug });
    const student = members.student(`filmer${refused ?? ''}`);
    const truth = clipTruth('sound');
    const mp4 = Buffer.from('a video');
    const suggestion = { impact: null, window: { first: 80, last: 200 }, strip: [90, 120, 150] };
    await tellPast(resources, academyId, async (past) => {
      const filmed = { mp4, truth, at: now, suggestion, ...(refused === undefined ? {} : { refused }) };
      const { clip, audit } = clipRows(student, filmed);
      await past.tx.clip.createMany({ data: [clip] });
      await past.tx.auditEntry.createMany({ data: audit });
      const ctx = past.of(student, now);
      const input = {
        fileName: 'swing.mp4',
        view: truth.view,
        swingLength: 'full',
        lengthBytes: mp4.length,
      } as const;
      const { id: clipId } = await startClip({ ctx, input });
      await finishClip({ ctx, input: { clipId } });
      const system = past.system(now);
      const begun = await beginPreparing({ ctx: system, input: { clipId } });
      const outcome = outcomeOf(clip);
      await finishPreparing({ ctx: system, input: { clipId, fence: begun?.fence ?? 0, outcome } });
      expect(await rowsOfClip(past, clip.id)).toEqual(await rowsOfClip(past, clipId));
    });
  },
);

it('a photo of the grip stands as uploaded and prepared by the verbs', async () => {
  const line: StudentLine = {
    ...{ key: 'photographer', name: 'P', hand: 'right', ageGroup: 'adult', joinedDaysAgo: 3 },
  };
  await tellPast(resources, academyId, (past) =>
    writeRows(past, [peopleRows({ academyId, academy, manager, line, personId: newId(), now })]),
  );
  const student = (await membersOf(resources, { id: academyId, slug: academy.slug })).student(line.key);
  const jpeg = Buffer.from('a photo');
  await tellPast(resources, academyId, async (past) => {
    const { clip, audit } = photoRows(student, { jpeg, at: now, size: gripSize });
    await past.tx.clip.createMany({ data: [clip] });
    await past.tx.auditEntry.createMany({ data: audit });
    const ctx = past.of(student, now);
    const facts = { view: 'grip-photo', swingLength: 'none' } as const;
    const input = { fileName: 'grip.jpg', ...facts, lengthBytes: jpeg.length };
    const { id: clipId } = await startClip({ ctx, input });
    await finishClip({ ctx, input: { clipId } });
    const system = past.system(now);
    const begun = await beginPreparing({ ctx: system, input: { clipId } });
    const sha256 = createHash('sha256').update(jpeg).digest('hex');
    const outcome: Outcome = { kind: 'photo', ...gripSize, sha256 };
    await finishPreparing({ ctx: system, input: { clipId, fence: begun?.fence ?? 0, outcome } });
    expect(await rowsOfClip(past, clip.id)).toEqual(await rowsOfClip(past, clipId));
  });
});
