import type { Tx } from '@ballfirst/db/with-academy';
import { readingsOf } from '@ballfirst/diagnosis/evidence-of';
import { fatRiskWith } from '@ballfirst/diagnosis/fat-risk-with';
import type { PhraseFacts } from '@ballfirst/practice/phrase-values';
import type { Context } from '../context.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { markedClips } from './marked-clips.ts';
import { studentSetOf } from './student-set-of.ts';

/** How often the set of a submission meets the ground first, as a phrase tells it; null where no clip tells an arc. */
export const groundOf = async (
  tx: Tx,
  ctx: Context,
  submissionId: string,
): Promise<PhraseFacts['ground']> => {
  const row = await findSubmission(tx, ctx, submissionId);
  const clips = (await markedClips(tx, ctx, row)).filter(({ trail = [] }) => trail.length > 0);
  if (clips.length === 0) return null;
  const set = await studentSetOf(tx, ctx, { ...row, hand: row.student.hand });
  for (const clip of clips) {
    const risk = fatRiskWith(readingsOf(clip).arc, { ...clip, set });
    if (risk?.kind === 'told') return { fat: risk.fat, forwardMm: risk.forward.byMm };
  }
  return null;
};
