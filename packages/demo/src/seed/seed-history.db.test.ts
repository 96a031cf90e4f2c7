import { fileURLToPath } from 'node:url';
import { weekOf } from '@ballfirst/calendar/week-of';
import { Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { withAcademy } from '@ballfirst/db/with-academy';
import { programmeVerdict } from '@ballfirst/progress/programme-verdict';
import { sealAcademy } from '@ballfirst/services/audit/seal-academy';
import { verifyAcademy } from '@ballfirst/services/audit/verify-academy';
import { readInbox } from '@ballfirst/services/inbox/read-inbox';
import { isHeldBack } from '@ballfirst/services/learning/is-held-back';
import { readLearning } from '@ballfirst/services/learning/read-learning';
import { rollUpWeek } from '@ballfirst/services/roll-ups/roll-up-week';
import { hasConsent } from '@ballfirst/services/students/require-consent';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { contextOf, systemContext } from './at-time.ts';
import { membersOf } from './members.ts';
import { type DemoAcademy, seedDemo } from './seed-demo.ts';
import { seedHistory } from './seed-history.ts';

/** A Wednesday, twenty past ten in London: every stretch of the inbox lies ahead. */
const now = new Date('2026-11-25T10:20:00Z');
const clipsFolder = fileURLToPath(new URL('../../clips/', import.meta.url));
let test: TestDatabase;
let world: SystemWorld;
let demo: DemoAcademy[];
let main: DemoAcademy;
const early: string[] = [];
const resourcesOf = () => world.contextOf(main?.id ?? '018f0000-0000-7000-8000-000000000001').resources;
const inMain = <T>(work: (tx: Tx) => Promise<T>): Promise<T> => withAcademy(test.db, main.id, work);

/** Stops in the middle once, as a person would who stops the service, and goes on. */
beforeAll(async () => {
  test = await testDatabase();
  world = systemWorld(test.db, now);
  demo = (await seedDemo({ resources: resourcesOf(), clipsFolder, now })) ?? [];
  main = demo[0] as DemoAcademy;
  early.push(...(await inbox()).map(({ block }) => block));
  const telling = { resources: resourcesOf(), clipsFolder, demo, from: now };
  let chapters = 0;
  const onProgress = () => {
    chapters += 1;
  };
  expect(await seedHistory({ ...telling, onProgress, isStopped: () => chapters >= 7 })).toBe(false);
  expect(await seedHistory(telling)).toBe(true);
}, 120_000);
afterAll(() => test.close());

const inbox = async () => {
  const members = await membersOf(resourcesOf(), main);
  const ctx = contextOf(resourcesOf(), members.coach('tamsin'), now);
  return (await readInbox({ ctx, input: { limit: 100 } })).items;
};
const tallied = <T extends string>(words: readonly T[]): Partial<Record<T, number>> => {
  const counts: Partial<Record<T, number>> = {};
  for (const word of words) counts[word] = (counts[word] ?? 0) + 1;
  return counts;
};

it('has people of every standing, juniors with and without consent, either hand', async () => {
  const students = await inMain((tx) => tx.student.findMany());
  expect(tallied(students.map(({ standing }) => standing))).toEqual({
    ...{ invited: 2, trial: 21, paid: 7, paused: 2, lapsed: 6, left: 2 },
  });
  const juniors = students.filter(({ ageGroup }) => ageGroup === 'junior');
  expect(new Set(juniors.map(hasConsent))).toEqual(new Set([true, false]));
  expect(students.filter(({ hand }) => hand === 'left').length).toBeGreaterThanOrEqual(5);
  expect(main.people).toHaveLength(44);
});

it('has something in every stretch of the inbox before anybody signs in but the farthest, and then there too', async () => {
  expect(new Set(early)).toEqual(new Set(['pain', 'late', 'before-noon', 'today', 'tomorrow']));
  const items = await inbox();
  expect(new Set(items.map(({ block }) => block))).toEqual(
    new Set(['pain', 'late', 'before-noon', 'today', 'tomorrow', 'later']),
  );
  expect(new Set(items.map(({ kind }) => kind))).toEqual(new Set(['swing', 'pain', 'question', 'stuck']));
  // The other one was heard weeks ago.
  expect(items.filter(({ kind }) => kind === 'pain')).toHaveLength(1);
  const claimed = items.filter(({ claim }) => claim !== null);
  expect(claimed.length).toBeGreaterThanOrEqual(2);
  expect(items.length).toBeGreaterThan(claimed.length);
});

it('waits with every fault that leads a tally', async () => {
  const rows = await inMain((tx) => tx.submission.findMany({ where: { status: 'waiting' } }));
  const faults = new Set(rows.map(({ leadFault }) => leadFault));
  expect([...faults].sort()).toEqual(['fat', 'heel', 'shank', 'sky', 'thin', 'topped']);
  const all = await inMain((tx) => tx.submission.findMany());
  expect(new Set(all.map(({ status }) => status))).toEqual(
    new Set(['waiting', 'answered', 'film-again', 'needs-clip']),
  );
});

it('has practice with rungs passed and not, a pain hold, replies unread, check-ins of every kind', async () => {
  const { entries, programmes, replies, checkIns } = await inMain(async (tx) => ({
    entries: await tx.practiceEntry.findMany(),
    programmes: await tx.programme.findMany(),
    replies: await tx.reply.findMany(),
    checkIns: await tx.checkIn.findMany(),
  }));
  expect(new Set(entries.map(({ verdict }) => verdict))).toEqual(new Set(['passed', 'stay', 'back', 'hold']));
  expect(new Set(programmes.map(({ status }) => status))).toEqual(
    new Set(['open', 'held', 'done', 'replaced']),
  );
  expect(replies.filter(({ readAt }) => readAt === null).length).toBeGreaterThanOrEqual(2);
  expect(new Set(checkIns.map(({ status }) => status))).toEqual(
    new Set(['scheduled', 'sent', 'done', 'cancelled']),
  );
  expect(entries.length).toBeGreaterThan(120);
  // Two programmes have a second drill; what was practised of it was logged after the first, on the same days.
  const two = programmes.filter(({ secondDrillId }) => secondDrillId !== null);
  expect(two).toHaveLength(2);
  for (const { id } of two) {
    const of = entries.filter(({ programmeId }) => programmeId === id);
    const seconds = of.filter(({ second }) => second);
    expect(seconds.length).toBeGreaterThan(0);
    const firstDays = new Set(of.filter(({ second }) => !second).map(({ localDate }) => String(localDate)));
    for (const { localDate } of seconds) expect(firstDays).toContain(String(localDate));
  }
});

it('shows two photos of a grip beside swings that wait', async () => {
  const photos = await inMain((tx) =>
    tx.clip.findMany({ where: { view: 'grip-photo' }, include: { photoSwing: true } }),
  );
  expect(photos.map(({ status, photoSwing }) => [status, photoSwing?.status])).toEqual([
    ['ready', 'waiting'],
    ['ready', 'waiting'],
  ]);
});

/** The measurement that a programme's cause is read by, and what it varies by from swing to swing (invented). */
const named: Readonly<Record<string, { readonly key: string; readonly withinSd: number }>> = {
  'hang-back': { key: 'hip-shift-top-lead-arm-down', withinSd: 10 },
  'sway-away': { key: 'hip-shift-address-top', withinSd: 10 },
  'handle-back': { key: 'handle-ahead-of-lead-thigh', withinSd: 6 },
  'hips-back-at-address': { key: 'hip-middle-along-ankles', withinSd: 2 },
  'thrown-early': { key: 'grip-end-to-ball-line-at-shaft-parallel-down', withinSd: 12 },
};
const opposites: Readonly<Record<string, 'fat' | 'thin'>> = { fat: 'thin', thin: 'fat' };

it('comes to each verdict about its programmes, from one swing to the next', async () => {
  const students = await inMain((tx) =>
    tx.student.findMany({
      include: {
        submissions: {
          where: { status: 'answered' },
          orderBy: { sentAt: 'asc' },
          include: { measurements: true, diagnoses: true },
        },
      },
    }),
  );
  const found = students.flatMap(({ submissions }) =>
    submissions.slice(1).map((now, index) => {
      const then = submissions[index] ?? now;
      const { fault = 'fat', chosenCause = '' } = then.diagnoses[0] ?? {};
      const { key, withinSd } = named[chosenCause] ?? { key: '', withinSd: 1 };
      const sideOf = (swing: typeof now) => {
        const tally = Tally.parse(swing.tally);
        return {
          measured: swing.measurements.find((one) => one.key === key) ?? null,
          tally: {
            balls: tally.balls,
            fault: tally[fault === 'thin' ? 'thin' : 'fat'],
            opposite: tally[opposites[fault] ?? 'thin'],
          },
        };
      };
      const after = sideOf(now);
      const { bandLow: low = null, bandHigh: high = null } = after.measured ?? {};
      return programmeVerdict({ before: sideOf(then), after, low, high, withinSd }).verdict;
    }),
  );
  expect(new Set(found)).toEqual(new Set(['better', 'no-clear-change', 'worse', 'over-correcting']));
});

it('counts every week as from scratch', async () => {
  const before = await inMain((tx) =>
    tx.rollUp.findMany({ orderBy: [{ studentId: 'asc' }, { week: 'asc' }] }),
  );
  expect(before.length).toBeGreaterThan(60);
  for (const { studentId, week } of before.slice(0, 40)) {
    expect(weekOf(week)).toBe(week);
    await rollUpWeek({ ctx: systemContext(resourcesOf(), main.id, now), input: { studentId, week } });
  }
  const bare = (rows: typeof before) => rows.map(({ updatedAt: _, ...row }) => row);
  const after = await inMain((tx) =>
    tx.rollUp.findMany({ orderBy: [{ studentId: 'asc' }, { week: 'asc' }] }),
  );
  expect(bare(after)).toEqual(bare(before));
});

it('leaves a whole audit, no letter, and nothing for the worker to do about the past', async () => {
  for (const { id } of demo) {
    const ctx = systemContext(resourcesOf(), id, now);
    // Transactions of other tests on the same server hold sealing back until they end.
    await vi.waitFor(
      async () => {
        await sealAcademy({ ctx });
        expect(await verifyAcademy({ ctx })).toMatchObject({ whole: true, unsealed: 0 });
      },
      { timeout: 100_000, interval: 50 },
    );
  }
  expect(world.sendings).toEqual([]);
  const waiting = await inMain((tx) => tx.outbox.findMany({ where: { sentAt: null } }));
  expect(new Set(waiting.map(({ kind }) => kind))).toEqual(new Set(['submission.claimed']));
});

it('is told once: a second start adds nothing', async () => {
  const count = () =>
    inMain(async (tx) => [
      await tx.submission.count(),
      await tx.practiceEntry.count(),
      await tx.auditEntry.count(),
    ]);
  const before = await count();
  expect(await seedDemo({ resources: resourcesOf(), clipsFolder, now })).toBeNull();
  expect(await seedHistory({ resources: resourcesOf(), clipsFolder, demo, from: now })).toBe(true);
  expect(await count()).toEqual(before);
});

it('has two smaller academies, one in another zone, one nearly empty', async () => {
  const [, zoned, small] = demo;
  const count = (id: string) =>
    withAcademy(test.db, id, async (tx) => [await tx.student.count(), await tx.submission.count()]);
  expect(await count(zoned?.id ?? '')).toEqual([5, 5]);
  expect(await count(small?.id ?? '')).toEqual([2, 1]);
});

it('has learned from choices that were free: some named before the order was shown, some against it', async () => {
  const members = await membersOf(resourcesOf(), main);
  const ctx = contextOf(resourcesOf(), members.coach('tamsin'), now);
  const learning = await readLearning({ ctx, input: {} });
  expect(learning.on).toBe(true);
  expect(learning.blind).toBeGreaterThanOrEqual(6);
  expect(learning.overruled).toBeGreaterThanOrEqual(3);
  const chosen = await inMain((tx) => tx.diagnosis.count());
  expect(learning.blind / chosen).toBeLessThan(0.3);
  // Just one of those that wait is held back, always the same.
  const waiting = await inMain((tx) =>
    tx.submission.findMany({
      where: { status: 'waiting' },
      include: { clips: true, student: { include: { membership: true } } },
    }),
  );
  const heldBack = waiting
    .filter((row) => isHeldBack(row, { since: learning.since, chosen: false }))
    .map(({ student }) => student.membership.name);
  expect(heldBack).toEqual(['Maren Oakhurst']);
});
