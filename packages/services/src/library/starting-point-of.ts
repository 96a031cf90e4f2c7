import { StartingPoint } from '@ballfirst/contracts/http/starting-points';
import { z } from 'zod';
import type { KeptRow } from './library-items.ts';

/** What is stored of a starting point. */
export const KeptStart = StartingPoint.omit({ id: true, at: true }).extend({ replyId: z.string() });

/** A starting point as the contract says it. */
export const startingPointOf = (row: KeptRow): z.output<typeof StartingPoint> => {
  const { replyId: _, ...kept } = KeptStart.parse(row.content);
  return StartingPoint.parse({ ...kept, id: row.key, at: row.at.toISOString() });
};
