import { type InboxFilters, readInboxPage } from '@ballfirst/db/reads/inbox-page';
import { requireStaff } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { instantPlaceOf, pageOf } from '../keyset.ts';
import type { Call, Input, Reply } from '../operation-types.ts';
import { dayEdges } from './block-of.ts';
import { inboxItemOf } from './inbox-item-of.ts';

const filtersOf = (input: Input<'readInbox'>, membershipId: string): InboxFilters => ({
  ...(input.fault === undefined ? {} : { fault: input.fault }),
  ...(input.claimed === undefined ? {} : { claimedBy: input.claimed === 'me' ? membershipId : 'none' }),
  ...(input.kind === undefined ? {} : { kind: input.kind }),
  ...(input.search === undefined ? {} : { search: input.search }),
});

/** One page of what waits, by its stored priority. @throws ProblemError not-allowed, bad-request */
export const readInbox = async ({ ctx, input }: Call<'readInbox'>): Promise<Reply<'readInbox'>> => {
  const { membershipId } = requireStaff(ctx);
  const now = ctx.resources.clock.now();
  const rows = await readInboxPage(ctx.resources.db, {
    academyId: ctx.academyId,
    limit: input.limit + 1,
    ...(input.after === undefined ? {} : { after: instantPlaceOf(input.after) }),
    filters: filtersOf(input, membershipId),
    now,
  });
  const { items, next } = pageOf(rows, input.limit, (row) => ({
    key: row.priorityKey,
    id: row.id,
  }));
  const [first] = items;
  if (first === undefined) return { items: [], next };
  const edges = dayEdges(now, first.zone);
  const replies = await repliesAsked(ctx, items);
  return { items: items.map((row) => inboxItemOf(row, edges, replies)), next };
};

/** The reply that each question on the page is about. */
const repliesAsked = async (
  ctx: Context,
  rows: readonly { readonly id: string; readonly kind: string }[],
): Promise<ReadonlyMap<string, string>> => {
  const ids = rows.filter(({ kind }) => kind === 'question').map(({ id }) => id);
  if (ids.length === 0) return new Map();
  const asked = await inTransaction(ctx, (tx) =>
    tx.concern.findMany({
      where: { academyId: ctx.academyId, id: { in: ids } },
      select: { id: true, subjectId: true },
    }),
  );
  return new Map(asked.map(({ id, subjectId }) => [id, subjectId]));
};
