import { dueCheckIns } from '@ballfirst/db/crossings/due-check-ins';
import { dueTrialEnds } from '@ballfirst/db/crossings/due-trial-ends';
import { newId } from '@ballfirst/db/ids';
import { withAcademy } from '@ballfirst/db/with-academy';
import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { createMembership, createStudent, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { trialPeriod } from '../students/trial-period.ts';
import { checkInTime } from './check-in-time.ts';
import { endTrial } from './end-trial.ts';
import { sendDueCheckIn } from './send-due-check-in.ts';

/** Five zones: no clock change, changes on three different dates in two hemispheres, and half an hour of one. */
const zones = [
  'Asia/Tokyo',
  'Europe/Stockholm',
  'America/New_York',
  'Pacific/Auckland',
  'Australia/Lord_Howe',
] as const;
const perZone = 60;
const checkInsEach = 4;

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
  world = systemWorld(test.db, factoryNow);
});
afterAll(() => test.close());

/** What the wall clock of a zone says, by the platform's own formatter and not by our calendar. */
const wallOf = (zone: string) => {
  const words = new Intl.DateTimeFormat('en-GB', {
    ...{ timeZone: zone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' },
  });
  return (at: Date): string => words.format(at);
};

it('asks each of 300 students in five zones once, at eight on their own wall, through a year of clock changes', async () => {
  const random = seededRandom(20260105);
  const dayMs = 86_400_000;
  const from = Date.UTC(2026, 0, 5, 12);
  const { academyId } = await createMembership(test.db, { role: 'manager' });
  const ctx = world.contextOf(academyId);
  const planned = new Map<string, string>();
  const ending = new Map<string, string>();
  const dueTimes: number[] = [];
  for (const zone of zones) {
    for (let n = 0; n < perZone; n += 1) {
      const membership = await createMembership(test.db, { academyId, role: 'student', zone });
      const startedAt = new Date(from + Math.floor(random() * 340 * dayMs));
      const trial = trialPeriod({ startedAt, days: 14, zone });
      const paid = n % 2 === 0;
      const student = await createStudent(test.db, {
        ...{ academyId, membershipId: membership.id, standing: paid ? 'paid' : 'trial' },
        ...(paid ? { trialStartedAt: null, trialEndsAt: null } : trial),
      });
      if (!paid) {
        ending.set(student.id, zone);
        dueTimes.push(trial.trialEndsAt.getTime());
        continue;
      }
      const submission = await createSubmission(test.db, { academyId, studentId: student.id });
      await withAcademy(test.db, academyId, async (tx) => {
        const programmeId = newId();
        await tx.programme.create({
          data: {
            ...{ academyId, id: programmeId, studentId: student.id, submissionId: submission.id },
            ...{ cause: 'thrown-early', drillId: 'flat-towel', drillVersion: 1, exaggeration: 'mild' },
            ...{ place: 'mat', weeklyMinutes: 60, rung: 'rehearsal', status: 'open', createdAt: startedAt },
          },
        });
        for (let k = 0; k < checkInsEach; k += 1) {
          const id = newId();
          const sentAt = new Date(from + Math.floor(random() * 350 * dayMs));
          const days = 1 + Math.floor(random() * 14);
          const at = checkInTime({ sentAt, days, zone });
          dueTimes.push(at.dueAt.getTime());
          await tx.checkIn.create({
            data: {
              ...{ academyId, id, studentId: student.id, programmeId, asks: 'clip', status: 'scheduled' },
              ...at,
            },
          });
          planned.set(id, zone);
        }
      });
    }
  }

  // The worker's ticks: a moment before each instant on which something is due, and then.
  const sent = new Map<string, Date[]>();
  const ended = new Map<string, Date[]>();
  const note = (into: Map<string, Date[]>, id: string) => into.set(id, [...(into.get(id) ?? []), world.now]);
  const instants = [...new Set(dueTimes)].sort((a, b) => a - b).flatMap((at) => [at - 1, at]);
  for (const at of [...instants, from + 400 * dayMs]) {
    world.now = new Date(at);
    const [due, trials] = await Promise.all([
      dueCheckIns(test.db, { now: world.now, limit: 1000 }),
      dueTrialEnds(test.db, { now: world.now, limit: 1000 }),
    ]);
    // Two workers at once, as after a restart.
    await Promise.all([
      ...[...due, ...due].map(async ({ checkInId }) => {
        const { outcome } = await sendDueCheckIn({ ctx, input: { checkInId } });
        if (outcome === 'sent') note(sent, checkInId);
      }),
      ...[...trials, ...trials].map(async ({ studentId }) => {
        const { ended: now } = await endTrial({ ctx, input: { studentId } });
        if (now) note(ended, studentId);
      }),
    ]);
  }

  expect(sent.size).toBe((zones.length * perZone * checkInsEach) / 2);
  for (const [id, zone] of planned) {
    const times = sent.get(id) ?? [];
    expect([id, times.length, wallOf(zone)(times[0] ?? new Date(0))]).toEqual([id, 1, '08:00']);
  }
  expect(ended.size).toBe((zones.length * perZone) / 2);
  for (const [id, zone] of ending) {
    const times = ended.get(id) ?? [];
    expect([id, times.length, wallOf(zone)(times[0] ?? new Date(0))]).toEqual([id, 1, '00:00']);
  }
}, 120_000);
