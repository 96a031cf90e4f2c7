import { type InboxFilters, type InboxRow, readInboxPage } from '@ballfirst/db/reads/inbox-page';
import { requireStaff } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { instantPlaceOf, pageOf } from '../keyset.ts';
import type { Call, Input, Reply } from '../operation-types.ts';
import { inboxItemOf } from './inbox-item-of.ts';

const filtersOf = (input: Input<'readInbox'>, membershipId: string): InboxFilters => ({
  ...(input.fault === undefined ? {} : { fault: input.fault }),
  ...(input.claimed === undefined ? {} : { claimedBy: input.claimed === 'me' ? membershipId : 'none' }),
});

/** The academy's zone for the blocks, the students' own for the days of their trials. */
const zonesOf = (ctx: Context, rows: readonly InboxRow[]) =>
  inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId }, select: { zone: true } });
    const students = await tx.student.findMany({
      where: { academyId, id: { in: rows.map(({ studentId }) => studentId) }, standing: 'trial' },
      select: { id: true, membership: { select: { zone: true } } },
    });
    const own = new Map(students.map(({ id, membership }) => [id, membership.zone]));
    return { zone: academy.zone, zoneOf: (studentId: string) => own.get(studentId) ?? academy.zone };
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
    id: row.submissionId,
  }));
  if (items.length === 0) return { items: [], next };
  const { zone, zoneOf } = await zonesOf(ctx, items);
  return {
    items: items.map((row) => inboxItemOf(row, { now, zone, studentZone: zoneOf(row.studentId) })),
    next,
  };
};
