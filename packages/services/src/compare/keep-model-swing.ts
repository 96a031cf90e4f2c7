import { ProblemError } from '@ballfirst/contracts/problems';
import { newId } from '@ballfirst/db/ids';
import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { lockClip } from '../clips/lock-clip.ts';
import { once } from '../once.ts';
import type { Call, Reply } from '../operation-types.ts';
import { modelSwingInclude, modelSwingOf } from './model-swing-of.ts';

/**
 * Takes a clip into the academy's own collection. What the player allowed is written down with it and stays on record.
 * @throws ProblemError not-found, wrong-state: not ready, not sent to a coach, or in the collection already
 */
export const keepModelSwing = async ({
  ctx,
  input,
}: Call<'keepModelSwing'>): Promise<Reply<'keepModelSwing'>> => {
  const { membershipId } = requireManager(ctx);
  const { academyId } = ctx;
  return once(ctx, 'keepModelSwing', async (tx) => {
    const clip = await lockClip(tx, ctx, input.id);
    const kept = await tx.modelSwing.count({ where: { academyId, clipId: clip.id, endedAt: null } });
    if (clip.status !== 'ready' || kept > 0) throw new ProblemError('wrong-state');
    const row = await tx.modelSwing.create({
      data: {
        ...{ academyId, id: newId(), clipId: clip.id, byMembership: membershipId },
        ...{ name: input.name, permission: input.permission, permittedOn: new Date(input.permittedOn) },
        keptAt: ctx.resources.clock.now(),
      },
      include: modelSwingInclude,
    });
    const made = modelSwingOf(row);
    if (made === null) throw new ProblemError('wrong-state');
    await audit(tx, ctx, { action: 'keep-model-swing', subject: `clip:${clip.id}`, detail: { id: row.id } });
    return made;
  });
};
