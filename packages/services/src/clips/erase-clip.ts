import { audit } from '../audit.ts';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { stillKeysOf } from '../stills/still-keys-of.ts';
import { talksOf } from '../talk-through/talks-of.ts';
import { clipKeys, talkKey } from './keys.ts';
import { lockClip } from './lock-clip.ts';

/** A clip may be at work in another process for so long; files that it leaves behind are swept again. */
const workAtMostMs = 10 * 60_000;

/**
 * Removes every file of a clip whose consent was withdrawn, or of a photo that another one replaced: as it was uploaded, what was made of it, the pictures of
 * replies and what was said to it. Marks and measurements stay: numbers without pictures.
 * @returns erased: false while a process may still be writing, or when it was done before
 */
export const eraseClip = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string };
}): Promise<{ erased: boolean }> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  const of = { academyId, clipId: input.clipId };
  const { blobs, clock } = ctx.resources;
  const found = await inTransaction(ctx, async (tx) => {
    const row = await lockClip(tx, ctx, input.clipId);
    const { status, eraseAt, erasedAt } = row;
    const due = status === 'erased' && erasedAt === null && eraseAt !== null && eraseAt <= clock.now();
    return due
      ? { startedAt: row.startedAt, stills: await stillKeysOf(tx, ctx, row), talks: await talksOf(tx, of) }
      : null;
  });
  if (found === null) return { erased: false };
  const talks = found.talks.map((id) => talkKey(of, id));
  for (const key of [...clipKeys(of), ...found.stills, ...talks]) await blobs.remove(key);
  const idleSince = (found.startedAt?.getTime() ?? 0) + workAtMostMs;
  if (idleSince > clock.now().getTime()) return { erased: false };
  return inTransaction(ctx, async (tx) => {
    const row = await lockClip(tx, ctx, input.clipId);
    if (row.erasedAt !== null) return { erased: false };
    await tx.talkThrough.deleteMany({ where: of });
    await tx.clip.update({
      where: { academyId_id: { academyId, id: row.id } },
      data: { erasedAt: clock.now(), fileName: 'removed', sha256: null },
    });
    await audit(tx, ctx, { action: 'erase-clip', subject: `clip:${row.id}` });
    return { erased: true };
  });
};
