import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';
import { triageHistory } from './triage-history.ts';
import { answerByOf, type TriageFacts, triageOf } from './triage-of.ts';

/** Where a swing stands in the inbox and why, with all that is known of its student and of what waits. */
export const placeSwing = async (
  tx: Tx,
  ctx: Context,
  studentId: string,
  facts: Omit<TriageFacts, 'history'>,
): Promise<ReturnType<typeof triageOf>> => {
  const { academy } = facts;
  const history = await triageHistory(tx, ctx, { studentId, academy, answerBy: answerByOf(facts) });
  return triageOf({ ...facts, history });
};
