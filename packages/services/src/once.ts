import { type OperationId, operations } from '@ballfirst/contracts/http/operations';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from './context.ts';
import { inTransaction } from './in-transaction.ts';
import type { Reply } from './operation-types.ts';
import { waitedTooLong } from './waited-too-long.ts';

/**
 * Runs a creating verb so that one Idempotency-Key has one effect. The key's row is the first thing its transaction
 * writes: the same key at the same time waits on the index, then reads the answer the first one stored.
 * @throws ProblemError key-used-otherwise, same-key-at-work
 */
export const once = async <K extends OperationId>(
  ctx: Context,
  operationId: K,
  work: (tx: Tx) => Promise<Reply<K>>,
): Promise<Reply<K>> => {
  const { once: asked, academyId } = ctx;
  if (asked === undefined) return inTransaction(ctx, work);
  const { status } = operations[operationId];
  const id = { academyId, owner: asked.owner, key: asked.key };
  try {
    return await inTransaction(ctx, async (tx) => {
      const { count } = await tx.idempotency.createMany({
        data: [{ ...id, requestHash: asked.requestHash, status, body: '', at: ctx.resources.clock.now() }],
        skipDuplicates: true,
      });
      if (count === 0) return storedReply<K>(tx, id, asked.requestHash);
      const body = JSON.stringify(await work(tx));
      await tx.idempotency.update({ where: { academyId_owner_key: id }, data: { body } });
      return JSON.parse(body) as Reply<K>;
    });
  } catch (error) {
    if (waitedTooLong(error)) throw new ProblemError('same-key-at-work');
    throw error;
  }
};

const storedReply = async <K extends OperationId>(
  tx: Tx,
  id: { academyId: string; owner: string; key: string },
  requestHash: string,
): Promise<Reply<K>> => {
  const row = await tx.idempotency.findUnique({ where: { academyId_owner_key: id } });
  if (row === null) throw new ProblemError('same-key-at-work');
  if (row.requestHash !== requestHash) throw new ProblemError('key-used-otherwise');
  return JSON.parse(row.body) as Reply<K>;
};
