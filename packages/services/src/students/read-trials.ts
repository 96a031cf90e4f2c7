import { ProblemError } from '@ballfirst/contracts/problems';
import type { Prisma } from '@ballfirst/db/generated/client';
import { workingHoursOf } from '../academy/working-hours-of.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { pageOf, placeOf } from '../keyset.ts';
import type { Call, Reply } from '../operation-types.ts';
import { maturedTrials } from './matured-trials.ts';
import { trialIncidenceOf } from './trial-incidence-of.ts';
import { trialInclude, trialRowOf } from './trial-row-of.ts';

/** Stands in a cursor for a trial that has not started: they come last. */
const notStarted = 'not-started';

const afterPlace = (cursor: string): Prisma.StudentWhereInput => {
  const { key, id } = placeOf(cursor);
  if (key === notStarted) return { trialEndsAt: null, id: { gt: id } };
  const at = new Date(key);
  if (Number.isNaN(at.getTime())) throw new ProblemError('bad-request');
  return { OR: [{ trialEndsAt: { gt: at } }, { trialEndsAt: at, id: { gt: id } }, { trialEndsAt: null }] };
};

/** Open trials, the one that ends first at the head, and the share of the matured ones that became paid. */
export const readTrials = async ({ ctx, input }: Call<'readTrials'>): Promise<Reply<'readTrials'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
    const rows = await tx.student.findMany({
      where: {
        academyId,
        standing: 'trial',
        ...(input.after === undefined ? {} : afterPlace(input.after)),
      },
      include: trialInclude,
      orderBy: [{ trialEndsAt: { sort: 'asc', nulls: 'last' } }, { id: 'asc' }],
      take: input.limit + 1,
    });
    const page = pageOf(rows, input.limit, (row) => ({
      key: row.trialEndsAt?.toISOString() ?? notStarted,
      id: row.id,
    }));
    const terms = { trialDays: academy.trialDays, working: workingHoursOf(academy) };
    const now = ctx.resources.clock.now();
    return {
      items: page.items.map((row) => trialRowOf(row, terms, now)),
      next: page.next,
      incidence: await trialIncidenceOf(tx, ctx),
      matured: await maturedTrials(tx, ctx),
    };
  });
};
