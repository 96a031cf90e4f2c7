import { ProblemError } from '@ballfirst/contracts/problems';
import { Pain } from '@ballfirst/contracts/words';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { onceEffect } from '../effects/once-effect.ts';
import { raiseConcern } from './raise-concern.ts';

/**
 * Puts a pain told while practising before the coaches (event practice.logged); any other entry brings nothing. Practice
 * was held when it was told.
 * @returns the concern raised, null when there was none to raise
 * @throws ProblemError not-found
 */
export const raisePain = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { eventId: string; entryId: string };
}): Promise<{ concernId: string | null }> => {
  requireSystem(ctx);
  const concernId = await onceEffect(ctx, { eventId: input.eventId, name: 'raise-pain' }, async (tx) => {
    const entry = await tx.practiceEntry.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: input.entryId } },
      include: { student: { include: { academy: true } } },
    });
    if (entry === null) throw new ProblemError('not-found');
    const pain = Pain.parse(entry.pain);
    if (pain === 'none') return null;
    return raiseConcern(tx, ctx, {
      ...{ kind: 'pain', subjectId: entry.id, programmeId: entry.programmeId, pain },
      ...{ student: entry.student, academy: entry.student.academy },
    });
  });
  return { concernId };
};
