import type { Database } from '@ballfirst/db/database';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

const keptMs = 60_000;
type Kept = { readonly zone: string; readonly until: number };
const kept = new WeakMap<Database, Map<string, Kept>>();

/** The zone of the academy, kept for a minute: the inbox is read on the hot path and the zone hardly ever changes. */
export const zoneOf = async (ctx: Context): Promise<string> => {
  const { db, clock } = ctx.resources;
  const now = clock.now().getTime();
  const zones = kept.get(db) ?? new Map<string, Kept>();
  kept.set(db, zones);
  const known = zones.get(ctx.academyId);
  if (known !== undefined && known.until > now && known.until - keptMs <= now) return known.zone;
  const { zone } = await withAcademy(db, ctx.academyId, (tx) =>
    tx.academy.findUniqueOrThrow({ where: { id: ctx.academyId } }),
  );
  zones.set(ctx.academyId, { zone, until: now + keptMs });
  return zone;
};
