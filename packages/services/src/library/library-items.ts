import type { Prisma } from '@ballfirst/db/generated/client';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

/** What coaches keep beside the built-in library; every change is a new version of its key. */
export type KeptKind = 'phrase' | 'starting-point';
export type KeptRow = Prisma.LibraryItemGetPayload<object>;

const removed: Prisma.InputJsonObject = { removed: true };

/** Whether the newest version says that the item was taken out. */
const isRemoved = ({ content }: KeptRow): boolean =>
  typeof content === 'object' && content !== null && !Array.isArray(content) && content.removed === true;

/** The items of a kind as they stand, newest first. */
export const keptItems = async (tx: Tx, ctx: Context, kind: KeptKind): Promise<KeptRow[]> => {
  const { academyId } = ctx;
  const rows = await tx.libraryItem.findMany({
    where: { academyId, kind },
    orderBy: [{ key: 'asc' }, { version: 'desc' }],
    distinct: ['key'],
  });
  return rows
    .filter((row) => !isRemoved(row))
    .sort((a, b) => b.at.getTime() - a.at.getTime() || (a.key < b.key ? 1 : -1));
};

/** One item as it stands; null when there is none, or it was taken out. */
export const keptItem = async (
  tx: Tx,
  ctx: Context,
  kind: KeptKind,
  key: string,
): Promise<KeptRow | null> => {
  const { academyId } = ctx;
  const row = await tx.libraryItem.findFirst({
    where: { academyId, kind, key },
    orderBy: { version: 'desc' },
  });
  return row === null || isRemoved(row) ? null : row;
};

/** Takes an item out: its history stays. */
export const removeItem = async (tx: Tx, ctx: Context, row: KeptRow): Promise<void> => {
  const { academyId, kind, key, version } = row;
  const at = ctx.resources.clock.now();
  await tx.libraryItem.create({
    data: { academyId, kind, key, version: version + 1, content: removed, at },
  });
};
