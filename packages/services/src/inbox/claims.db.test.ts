import { actingStaff } from '@ballfirst/testing/acting';
import { createMembership, createSubmission, factoryNow } from '@ballfirst/testing/factories';
import { type SystemWorld, systemWorld } from '@ballfirst/testing/system-world';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { askToFilmAgain } from './ask-to-film-again.ts';
import { claimSubmission } from './claim-submission.ts';
import { lapseClaim } from './lapse-claim.ts';
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
