import { withAcademy } from '@ballfirst/db/with-academy';
import { actingStaff } from '@ballfirst/testing/acting';
import { createMembership, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { askToFilmAgain } from './ask-to-film-again.ts';
import { claimSubmission } from './claim-submission.ts';
import { handOverSubmission } from './hand-over-submission.ts';
import { lapseClaim } from './lapse-claim.ts';
import { placeStudentAgain } from './place-student-again.ts';
import { readInbox } from './read-inbox.ts';
import { readInboxLoad } from './read-inbox-load.ts';
import { releaseSubmission } from './release-submission.ts';

let test: TestDatabase;
let world: SystemWorld;
beforeAll(async () => {
  test = await testDatabase({ poolSize: 10 });
});
afterAll(() => test.close());
beforeEach(() => {
  world = systemWorld(test.db, factoryNow);
});

const minutesLater = (minutes: number): Date => new Date(factoryNow.getTime() + minutes * 60_000);

const coaches = async (count: number) => {
  const first = await createMembership(test.db);
  const others = Array.from({ length: count - 1 }, () =>
    createMembership(test.db, { academyId: first.academyId }),
  );
  return [first, ...(await Promise.all(others))].map((member) => actingStaff(world, member));
};

const waiting = async (count: number) => {
  const [ctx, ...others] = await coaches(count);
  if (ctx === undefined) throw new Error('no coach');
  const { id } = await createSubmission(test.db, { academyId: ctx.academyId });
  return { ctx, others, input: { id } };
};

describe('a claim that is handed over', () => {
  const handed = async () => {
    const { ctx, others, input } = await waiting(2);
    const other = others[0] ?? ctx;
    if (other.actor.kind !== 'person') throw new Error('no person');
    const body = { ...input, to: other.actor.membershipId, why: 'You know this left-hander.' };
    return { ctx, other, input, body };
  };

  it('is the other coach’s, with the line of why, until it is released', async () => {
    const { ctx, other, input, body } = await handed();
    await expect(handOverSubmission({ ctx, input: body })).rejects.toMatchObject({ code: 'not-claimed' });
    await claimSubmission({ ctx, input });
    const given = await handOverSubmission({ ctx, input: body });
    expect(given.claim).toMatchObject({ membershipId: body.to, expiresAt: minutesLater(240).toISOString() });
    const [row] = (await readInbox({ ctx: other, input: { limit: 1, claimed: 'me' } })).items;
    expect(row?.claim?.handed).toEqual({ by: 'A coach', why: body.why });
    await expect(claimSubmission({ ctx, input })).rejects.toMatchObject({ code: 'already-claimed' });
    // Renewing never shortens what was handed over for longer.
    expect((await claimSubmission({ ctx: other, input })).claim?.expiresAt).toBe(
      minutesLater(240).toISOString(),
    );
    await releaseSubmission({ ctx: other, input });
    await claimSubmission({ ctx, input });
    const [again] = (await readInbox({ ctx, input: { limit: 1 } })).items;
    expect(again?.claim?.handed).toBeNull();
  });

  it('goes to a coach of this academy and to nobody else', async () => {
    const { ctx, input, body } = await handed();
    await claimSubmission({ ctx, input });
    const student = await createMembership(test.db, { academyId: ctx.academyId, role: 'student' });
    const foreign = await createMembership(test.db);
    const own = ctx.actor.kind === 'person' ? ctx.actor.membershipId : '';
    for (const to of [student.id, foreign.id, own]) {
      await expect(handOverSubmission({ ctx, input: { ...body, to } })).rejects.toMatchObject({
        code: 'bad-request',
      });
    }
  });
});

describe('what the academy has promised', () => {
  it('is beyond what can be answered where too much is due today', async () => {
    const { ctx } = await waiting(1);
    const { academyId } = ctx;
    // At half past four half an hour is left: one coach answers six.
    world.now = minutesLater(7.5 * 60);
    const { studentId } = await createSubmission(test.db, { academyId, answerBy: minutesLater(0) });
    for (let at = 0; at < 8; at += 1) {
      await createSubmission(test.db, { academyId, studentId, answerBy: minutesLater(8 * 60) });
    }
    const load = { late: 1, dueToday: 8, coaches: 1, workingMinutesLeft: 30, canAnswer: 6, beyond: 3 };
    expect(await readInboxLoad({ ctx, input: {} })).toEqual(load);
    world.now = minutesLater(9 * 60);
    expect(await readInboxLoad({ ctx, input: {} })).toMatchObject({ late: 9, dueToday: 0, beyond: 0 });
  });
});

describe('the place of a swing', () => {
  it('is found anew when its student is on a trial no longer', async () => {
    const { ctx, input } = await waiting(1);
    const { academyId } = ctx;
    const { studentId } = await withAcademy(test.db, academyId, (tx) =>
      tx.submission.findFirstOrThrow({ where: { academyId, id: input.id } }),
    );
    const system = world.contextOf(academyId);
    const keyWith = async (data: { standing: string; trialEndsAt: Date }) => {
      await withAcademy(test.db, academyId, (tx) =>
        tx.student.update({ where: { academyId_id: { academyId, id: studentId } }, data }),
      );
      expect(await placeStudentAgain({ ctx: system, input: { studentId } })).toEqual({ placed: 1 });
      const row = await withAcademy(test.db, academyId, (tx) =>
        tx.submission.findFirstOrThrow({ where: { academyId, id: input.id } }),
      );
      return row.priorityKey.getTime();
    };
    const trialEndsAt = minutesLater(10 * 60);
    const onTrial = await keyWith({ standing: 'trial', trialEndsAt });
    const paid = await keyWith({ standing: 'paid', trialEndsAt });
    expect(onTrial).toBeLessThan(paid);
  });
});

describe('a claim', () => {
  it('is won by exactly one of twenty coaches at once', async () => {
    const { ctx, others, input } = await waiting(20);
    const tried = await Promise.allSettled(
      [ctx, ...others].map((one) => claimSubmission({ ctx: one, input })),
    );
    const won = tried.filter(({ status }) => status === 'fulfilled');
    expect(won).toHaveLength(1);
    for (const one of tried) {
      if (one.status === 'rejected') expect(one.reason).toMatchObject({ code: 'already-claimed' });
    }
  });

  it('is renewed by its holder and lapses after half an hour alone', async () => {
    const { ctx, others, input } = await waiting(2);
    const other = others[0] ?? ctx;
    const system = world.contextOf(ctx.academyId);
    await claimSubmission({ ctx, input });
    world.now = minutesLater(20);
    const renewed = await claimSubmission({ ctx, input });
    expect(renewed.claim?.expiresAt).toBe(minutesLater(50).toISOString());
    world.now = minutesLater(49);
    expect(await lapseClaim({ ctx: system, input: { submissionId: input.id } })).toEqual({ lapsed: false });
    await expect(claimSubmission({ ctx: other, input })).rejects.toMatchObject({ code: 'already-claimed' });
    world.now = minutesLater(50);
    // Run out is run out, also before the job has taken it away.
    expect((await claimSubmission({ ctx: other, input })).claim?.expiresAt).toBe(
      minutesLater(80).toISOString(),
    );
    world.now = minutesLater(80);
    expect(await lapseClaim({ ctx: system, input: { submissionId: input.id } })).toEqual({ lapsed: true });
    expect(await lapseClaim({ ctx: system, input: { submissionId: input.id } })).toEqual({ lapsed: false });
  });

  it('is given back by its holder only', async () => {
    const { ctx, others, input } = await waiting(2);
    await claimSubmission({ ctx, input });
    await expect(releaseSubmission({ ctx: others[0] ?? ctx, input })).rejects.toMatchObject({
      code: 'already-claimed',
    });
    expect((await releaseSubmission({ ctx, input })).claim).toBeNull();
    expect((await releaseSubmission({ ctx: others[0] ?? ctx, input })).claim).toBeNull();
  });

  it('comes before asking to film again, which ends it', async () => {
    const { ctx, input } = await waiting(1);
    const ask = { ...input, reason: 'too-dark' as const };
    await expect(askToFilmAgain({ ctx, input: ask })).rejects.toMatchObject({ code: 'not-claimed' });
    await claimSubmission({ ctx, input });
    expect(await askToFilmAgain({ ctx, input: ask })).toMatchObject({ status: 'film-again', claim: null });
    await expect(claimSubmission({ ctx, input })).rejects.toMatchObject({ code: 'wrong-state' });
  });
});
