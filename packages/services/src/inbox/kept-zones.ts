import type { Database } from '@ballfirst/db/database';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';

export type Zones = { readonly academy: string; readonly students: ReadonlyMap<string, string> };

const keptMs = 60_000;
type Kept = { readonly academy: string; readonly students: Map<string, string>; readonly at: number };
const kept = new WeakMap<Database, Map<string, Kept>>();

const fresh = (entry: Kept | undefined, now: number): Kept | null =>
  entry !== undefined && entry.at <= now && now < entry.at + keptMs ? entry : null;

/**
 * The zones of an academy and of these students, kept for a minute: the inbox is read all day long, a zone hardly ever
 * changes, and only the words of a day hang on it.
 */
export const keptZones = async (ctx: Context, studentIds: readonly string[]): Promise<Zones> => {
  const { academyId } = ctx;
  const { db, clock } = ctx.resources;
  const now = clock.now().getTime();
  const academies = kept.get(db) ?? new Map<string, Kept>();
  kept.set(db, academies);
  const known = fresh(academies.get(academyId), now);
  const missing = [...new Set(studentIds)].filter((id) => known?.students.has(id) !== true);
  if (known !== null && missing.length === 0) return known;
  const [academy, students] = await inTransaction(ctx, async (tx) => [
    known?.academy ?? (await tx.academy.findUniqueOrThrow({ where: { id: academyId } })).zone,
    await tx.student.findMany({
      where: { academyId, id: { in: missing } },
      select: { id: true, membership: { select: { zone: true } } },
    }),
  ]);
  const entry: Kept = known ?? { academy, students: new Map(), at: now };
  for (const { id, membership } of students) entry.students.set(id, membership.zone);
  academies.set(academyId, entry);
  return entry;
};
