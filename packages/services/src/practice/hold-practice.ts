import type { Tx } from '@ballfirst/db/with-academy';
import { audit } from '../audit.ts';
import type { Context } from '../context.ts';
import { emit } from '../outbox.ts';

/** What brought the pain to us. */
export type HoldReason = 'pain-with-swing' | 'pain-in-practice';

/** Pain that is new or worse: the machine holds every open programme at once; only a coach lets it go on. */
export const holdPractice = async (
  tx: Tx,
  ctx: Context,
  studentId: string,
  reason: HoldReason,
): Promise<void> => {
  const { academyId } = ctx;
  const open = await tx.programme.findMany({ where: { academyId, studentId, status: 'open' } });
  for (const { id } of open) {
    await tx.programme.update({
      where: { academyId_id: { academyId, id } },
      data: { status: 'held', holdReason: reason },
    });
    await audit(tx, ctx, { action: 'hold-practice', subject: `programme:${id}`, detail: { reason } });
    await emit(tx, ctx, 'practice.held', { programmeId: id });
  }
};
