import { type AuditVerdict, verifyAudit } from '@ballfirst/db/reads/verify-audit';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { readHead } from './read-head.ts';

/** A row older than this and not sealed means that the sealing stands still. */
const unsealedAtMostMs = 5 * 60_000;

export type AcademyVerdict = AuditVerdict & {
  /** Whether the chain still holds the head kept outside the database; null where none was kept. */
  readonly holdsHead: boolean | null;
};

/**
 * Whether the academy's audit is whole: every sealed row verifies, none older than five minutes is unsealed, and the
 * chain was not cut back behind the head kept outside the database.
 */
export const verifyAcademy = async ({
  ctx,
}: {
  ctx: Context;
  input?: undefined;
}): Promise<AcademyVerdict> => {
  requireSystem(ctx);
  const { academyId, resources } = ctx;
  const head = await readHead(ctx);
  const verdict = await verifyAudit(resources.db, { academyId });
  const holdsHead =
    head === null
      ? null
      : await inTransaction(ctx, async (tx) => {
          const row = await tx.auditEntry.findUnique({
            where: { academyId_seq: { academyId, seq: BigInt(head.seq) } },
            select: { hash: true },
          });
          return row?.hash != null && Buffer.from(row.hash).toString('hex') === head.hash;
        });
  const oldest = verdict.oldestUnsealedAt;
  const sealedInTime =
    oldest === null || resources.clock.now().getTime() - oldest.getTime() <= unsealedAtMostMs;
  return { ...verdict, holdsHead, whole: verdict.whole && sealedInTime && holdsHead !== false };
};
