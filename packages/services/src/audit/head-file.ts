import { z } from 'zod';

/** Where the head of an academy's chain is kept outside the database, one file a day (UTC). */
export const headKey = (academyId: string, date: string): string => `${academyId}/audit/${date}.json`;

/** The day of an instant in UTC, YYYY-MM-DD. */
export const utcDay = (at: Date): string => at.toISOString().slice(0, 10);

export const Head = z.object({
  academyId: z.uuid(),
  date: z.iso.date(),
  seq: z.number().int().positive(),
  /** SHA-256 of the last sealed row, hex. */
  hash: z.string().regex(/^[\da-f]{64}$/),
  at: z.iso.datetime(),
});
export type Head = z.infer<typeof Head>;
