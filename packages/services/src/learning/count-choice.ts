import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

type Choice = { readonly submissionId: string; readonly blind: boolean; readonly overruled: boolean };

/**
 * Whether a choice is the one of its swing that is learned from: the one named before the order was shown, else the last if
 * it goes against the order. Takes back what counted before.
 * @param learns - whether the academy learns now
 */
export const countChoice = async (
  tx: Tx,
  ctx: Context,
  choice: Choice,
  learns: boolean,
): Promise<boolean> => {
  const { academyId } = ctx;
  const { submissionId, blind, overruled } = choice;
  const where = { academyId, submissionId, counted: true };
  if ((await tx.diagnosis.count({ where: { ...where, blind: true } })) > 0) return false;
  await tx.diagnosis.updateMany({ where, data: { counted: false } });
  return learns && (blind || overruled);
};
