import type { Tx } from '@ballfirst/db/with-academy';
import { drillById } from '@ballfirst/library/drills';
import { type PlayingHand, wordsForHand } from '@ballfirst/library/words-for-hand';
import { overCorrection } from '@ballfirst/practice/over-correction';
import type { Reply } from '../operation-types.ts';
import { edgesOf, preNamed, type StudentVerdict, verdictsOf } from '../verdicts/verdicts-of.ts';

type Shown = Reply<'readProgramme'>['overCorrection'];
type Row = {
  readonly academyId: string;
  readonly studentId: string;
  readonly submissionId: string;
  readonly status: string;
  readonly cause: string;
  readonly drillId: string;
};

const howWords = {
  into: 'That is the drill working, no new fault. Go on as you are; it settles.',
  through:
    'The drill has worked and you have gone past it. Overdo it half as much from now on, and send a swing so that your coach sees it.',
} as const;

/** By the measurement of the cause where both swings have it; by the balls alone only what is clear. */
const howOf = async (tx: Tx, row: Row, verdict: StudentVerdict): Promise<'into' | 'through' | null> => {
  const { academyId, studentId, submissionId } = row;
  const byBalls = verdict.verdict === 'over-correcting' ? 'into' : null;
  if (verdict.key === null) return byBalls;
  const where = { academyId, key: verdict.key };
  const before = await tx.measurement.findFirst({ where: { ...where, submissionId } });
  const after = await tx.measurement.findFirst({
    where: { ...where, submission: { studentId, sentAt: verdict.swings.after } },
  });
  if (before === null || after === null) return byBalls;
  const { balls } = verdict;
  return overCorrection({
    before: { count: balls.before.opposite, balls: balls.before.balls },
    after: { count: balls.after.opposite, balls: balls.after.balls },
    measurement: {
      before: before.value,
      after: after.value,
      ...edgesOf(preNamed(row.cause), [before]),
    },
  });
};

/** Whether the opposite miss comes because a running programme works, and what its player does then; null: no. */
export const overCorrectionOf = async (tx: Tx, row: Row, hand: PlayingHand): Promise<Shown> => {
  if (row.status !== 'open' && row.status !== 'held') return null;
  const verdict = (await verdictsOf(tx, row.academyId, [row.studentId])).get(row.studentId);
  if (verdict === undefined || verdict.causeId !== row.cause) return null;
  const how = await howOf(tx, row, verdict);
  if (how === null) return null;
  const comes = wordsForHand(drillById(row.drillId).overCorrection, hand);
  return { how, words: `${comes} ${howWords[how]}` };
};
