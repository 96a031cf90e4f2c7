import { type Seal, sealAudit } from '@ballfirst/db/crossings/seal-audit';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { type Head, headKey, utcDay } from './head-file.ts';

/**
 * Chains the academy's unsealed audit rows and keeps the new head of the day outside the database: whoever could
 * rewrite the whole chain would still have to change that file too.
 */
export const sealAcademy = async ({ ctx }: { ctx: Context; input?: undefined }): Promise<Seal> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const now = resources.clock.now();
  const seal = await sealAudit(resources.db, { academyId, now });
  if (seal.headHash === null) return seal;
  const date = utcDay(now);
  const key = headKey(academyId, date);
  if (seal.sealed > 0 || (await resources.blobs.size(key)) === null) {
    const head: Head = { academyId, date, seq: seal.headSeq, hash: seal.headHash, at: now.toISOString() };
    await resources.blobs.put(key, Buffer.from(`${JSON.stringify(head)}\n`));
  }
  return seal;
};
