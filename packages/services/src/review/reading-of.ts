import type { Tx } from '@ballfirst/db/with-academy';
import { evidenceOf, type Marked, type SwingEvidence, withoutOrder } from '@ballfirst/diagnosis/evidence-of';
import type { FaultId } from '@ballfirst/library/types';
import type { Context } from '../context.ts';
import { type BaseRates, baseRatesOf } from '../learning/base-rates-of.ts';
import { isHeldBack } from '../learning/is-held-back.ts';
import { learnedNow } from '../learning/learned-now.ts';
import type { SubmissionRow } from '../rows.ts';

/** How the marks of a submission are read now: with which rates, and whether the order of causes is held back. */
export type Reading = { readonly learns: boolean; readonly heldBack: boolean; readonly baseRates: BaseRates };

/** @param chosen - a cause was chosen for it already */
export const readingOf = async (
  tx: Tx,
  ctx: Context,
  row: SubmissionRow,
  chosen: boolean,
): Promise<Reading> => {
  const learned = await learnedNow(tx, ctx);
  const { since } = learned;
  return {
    learns: since !== null,
    heldBack: isHeldBack(row, { since, chosen }),
    baseRates: baseRatesOf(learned),
  };
};

/** The evidence as a coach may see it now. */
export const evidenceFor = (
  fault: FaultId,
  marked: Marked,
  { heldBack, baseRates }: Pick<Reading, 'heldBack' | 'baseRates'>,
): SwingEvidence => {
  const evidence = evidenceOf(fault, marked, baseRates);
  return heldBack ? withoutOrder(evidence) : evidence;
};
