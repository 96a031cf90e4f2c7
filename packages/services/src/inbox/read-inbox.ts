import { type InboxFilters, readInboxPage } from '@ballfirst/db/reads/inbox-page';
import { requireStaff } from '../authorise.ts';
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
    key: row.priorityKey.toISOString(),
    id: row.id,
  }));
  const [first] = items;
  if (first === undefined) return { items: [], next };
  const edges = dayEdges(now, first.zone);
  return { items: items.map((row) => inboxItemOf(row, edges)), next };
};
