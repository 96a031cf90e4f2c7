import type { Tx } from '@ballfirst/db/with-academy';
import { methodVersion } from '@ballfirst/diagnosis/weights';
import type { Reading } from '@ballfirst/swing/measurement';
import type { Context } from '../context.ts';

/** Keeps the readings of one clip in place of those before. */
export const storeMeasurements = async (
  tx: Tx,
  ctx: Context,
  of: { readonly submissionId: string; readonly clipId: string },
  readings: readonly Reading[],
): Promise<void> => {
  const { academyId } = ctx;
  await tx.measurement.deleteMany({ where: { academyId, ...of } });
  await tx.measurement.createMany({
    data: readings.map(({ key, unit, value, u, band }) => ({
      academyId,
      ...of,
      key,
      unit,
      value,
      u,
      bandLow: band?.low ?? null,
      bandHigh: band?.high ?? null,
      methodVersion,
      at: ctx.resources.clock.now(),
    })),
  });
};
