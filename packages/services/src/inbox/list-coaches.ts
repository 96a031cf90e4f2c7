import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';

/** Whom a claim can be handed to: coaches and managers who are on the staff today, by name. */
export const listCoaches = async ({ ctx }: Call<'listCoaches'>): Promise<Reply<'listCoaches'>> => {
  requireStaff(ctx);
  const rows = await inTransaction(ctx, (tx) =>
    tx.membership.findMany({
      where: { academyId: ctx.academyId, role: { in: ['coach', 'manager'] }, endedAt: null },
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
      select: { id: true, name: true },
    }),
  );
  return { items: rows.map(({ id, name }) => ({ membershipId: id, name })) };
};
