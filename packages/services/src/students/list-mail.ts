import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import { instantPlaceOf, pageOf } from '../keyset.ts';
import type { Call, Reply } from '../operation-types.ts';

/** Messages the service sent, newest first. */
export const listMail = async ({ ctx, input }: Call<'listMail'>): Promise<Reply<'listMail'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const after = input.after === undefined ? null : instantPlaceOf(input.after);
    const rows = await tx.mail.findMany({
      where: {
        academyId,
        ...(after === null
          ? {}
          : { OR: [{ at: { lt: after.key } }, { at: after.key, id: { lt: after.id } }] }),
      },
      orderBy: [{ at: 'desc' }, { id: 'desc' }],
      take: input.limit + 1,
    });
    const page = pageOf(rows, input.limit, (row) => ({ key: row.at.toISOString(), id: row.id }));
    const readers = await tx.membership.findMany({
      where: { academyId, id: { in: page.items.map(({ toMembership }) => toMembership) } },
    });
    const named = new Map(readers.map(({ id, name, email }) => [id, `${name} <${email}>`]));
    return {
      items: page.items.map((row) => ({
        id: row.id,
        to: row.sentTo ?? named.get(row.toMembership) ?? '',
        kind: row.kind,
        subject: row.subject,
        text: row.textBody,
        at: row.at.toISOString(),
      })),
      next: page.next,
    };
  });
};
