import type { Tx } from '@ballfirst/db/with-academy';
import { readingsOf } from '@ballfirst/diagnosis/evidence-of';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { markedClips } from './marked-clips.ts';
import { storeMeasurements } from './store-measurements.ts';

/** Stores anew what the marks of a submission measure, after its club, hand, view or swing length was put right. */
export const measureAgain = async (tx: Tx, ctx: Context, row: SubmissionRow): Promise<void> => {
  for (const { clipId, ...marked } of await markedClips(tx, ctx, row)) {
    if (marked.marks.length === 0) continue;
    await storeMeasurements(tx, ctx, { submissionId: row.id, clipId }, readingsOf(marked).readings);
  }
};
