import type { Tx } from '@ballfirst/db/with-academy';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

export type EffectKey = {
  /** The event that asks for it, or the row it is about where there is one effect a row for ever. */
  readonly eventId: string;
  readonly name: string;
};

/**
 * Runs an effect once for its key, however often its job runs: the key's row is written in the effect's own
 * transaction (the open one of the context, if any). Runs at the same time wait on the key; one that waits too long
 * fails with 55P03, and its job tries again.
 * @returns null when the effect had been done before
 */
export const onceEffect = async <T>(
  ctx: Context,
  key: EffectKey,
  work: (tx: Tx) => Promise<T>,
  options: { readonly timeoutMs?: number } = {},
): Promise<T | null> => {
  const { academyId, resources } = ctx;
  const run = async (tx: Tx): Promise<T | null> => {
    const { count } = await tx.effect.createMany({
      data: [{ academyId, eventId: key.eventId, name: key.name, at: resources.clock.now() }],
      skipDuplicates: true,
    });
    return count === 0 ? null : work(tx);
  };
  return ctx.tx === undefined ? withAcademy(resources.db, academyId, run, options) : run(ctx.tx);
};
