import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import { Prisma } from '@ballfirst/db/generated/client';
import { requireSystem } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';

/**
 * Writes where to look first in a clip that was prepared without it; one that has it already keeps it.
 * @returns noted: false when it has one, or is open no more
 */
export const noteSuggestion = async ({
  ctx,
  input,
}: {
  ctx: Context;
  input: { clipId: string; suggestion: Suggestion };
}): Promise<{ noted: boolean }> => {
  requireSystem(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    const { count } = await tx.clip.updateMany({
      where: { academyId, id: input.clipId, status: 'ready', suggestion: { equals: Prisma.DbNull } },
      data: { suggestion: input.suggestion },
    });
    return { noted: count === 1 };
  });
};
