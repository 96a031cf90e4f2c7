import type { Learned } from '@ballfirst/db/reads/learned';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

/** What the academy has learned up to now, in an open transaction. */
export const learnedNow = async (tx: Tx, ctx: Context): Promise<Learned> => {
  const [row] = await tx.$queryRaw<{ document: Learned }[]>`
    SELECT public.learned(${ctx.academyId}::uuid, NULL, ${ctx.resources.clock.now()}) AS document`;
  if (row === undefined) throw new RangeError('There is no such academy.');
  return row.document;
};
