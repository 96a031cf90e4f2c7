import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import { type FullProgramme, findProgramme } from './programme-of.ts';

/** A programme held against other writers: the entries of two phones count one after the other. @throws ProblemError not-found */
export const lockProgramme = async (tx: Tx, ctx: Context, id: string): Promise<FullProgramme> => {
  await tx.$queryRaw`SELECT id FROM public.programme
    WHERE academy_id = ${ctx.academyId}::uuid AND id = ${id}::uuid FOR UPDATE`;
  return findProgramme(tx, ctx, id);
};
