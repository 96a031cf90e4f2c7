import type { Marking } from '@ballfirst/contracts/http/review';
import { Mark, Observation } from '@ballfirst/contracts/http/submissions';
import type { Tx } from '@ballfirst/db/with-academy';
import type { z } from 'zod';
import type { Context } from '../context.ts';
import type { ClipRow } from '../rows.ts';
import { trailOf } from './trail-of.ts';

export type MarkingShape = z.output<typeof Marking>;

/** The stored marks and observations of a clip with their version. */
export const readMarking = async (tx: Tx, ctx: Context, clip: ClipRow): Promise<MarkingShape> => {
  const where = { academyId: ctx.academyId, clipId: clip.id };
  const marks = await tx.mark.findMany({
    where,
    orderBy: [{ frame: 'asc' }, { position: 'asc' }, { point: 'asc' }],
  });
  const observations = await tx.observation.findMany({ where, orderBy: { key: 'asc' } });
  return {
    clipId: clip.id,
    version: clip.marksVersion,
    marks: marks.map((row) => Mark.parse(row)),
    observations: observations.map((row) => Observation.parse(row)),
    trail: trailOf(clip),
  };
};
