import type { Concern } from '@ballfirst/contracts/http/inbox';
import { Concern as Shape } from '@ballfirst/contracts/http/inbox';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Prisma } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

const include = { claimant: true } as const satisfies Prisma.ConcernInclude;
export type ConcernRow = Prisma.ConcernGetPayload<{ include: typeof include }>;

/** A concern held against other writers to the end of the transaction. @throws ProblemError not-found */
export const lockConcern = async (tx: Tx, ctx: Context, id: string): Promise<ConcernRow> => {
  const { academyId } = ctx;
  await tx.$queryRaw`SELECT id FROM public.concern
    WHERE academy_id = ${academyId}::uuid AND id = ${id}::uuid FOR NO KEY UPDATE`;
  const row = await tx.concern.findUnique({ where: { academyId_id: { academyId, id } }, include });
  if (row === null) throw new ProblemError('not-found');
  return row;
};

/** Who holds a concern; a claim that has run out is none. */
export const holderOf = (row: ConcernRow, now: Date): ConcernRow['claimant'] =>
  row.claimExpiresAt !== null && row.claimExpiresAt > now ? row.claimant : null;

/** Writes what was done with a concern and reads it again. */
export const changeConcern = (
  tx: Tx,
  row: ConcernRow,
  data: Prisma.ConcernUncheckedUpdateInput,
): Promise<ConcernRow> =>
  tx.concern.update({
    where: { academyId_id: { academyId: row.academyId, id: row.id } },
    data: { ...data, version: { increment: 1 } },
    include,
  });

/** A concern as the contract says it. */
export const concernOf = (row: ConcernRow, now: Date): Concern => {
  const holder = holderOf(row, now);
  return Shape.parse({
    id: row.id,
    kind: row.kind,
    studentId: row.studentId,
    status: row.status,
    claim:
      holder === null
        ? null
        : {
            membershipId: holder.id,
            name: holder.name,
            expiresAt: row.claimExpiresAt?.toISOString(),
            handed: null,
          },
    outcome: row.outcome,
    version: row.version,
  });
};
