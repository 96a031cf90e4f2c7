import type { Database } from './database.ts';
import type { Prisma } from './generated/client.ts';
import { isWorthRetrying } from './is-worth-retrying.ts';

export type Tx = Prisma.TransactionClient;

const attemptsAtMost = 4;

/**
 * Runs `work` in one transaction that sees and writes one academy only. A serialization failure or deadlock rolls the
 * whole back and runs `work` again, four times in all: `work` must do nothing outside `tx` that may not happen twice.
 * @throws whatever `work` throws, after a full rollback
 */
export const withAcademy = async <T>(
  db: Database,
  academyId: string,
  work: (tx: Tx) => Promise<T>,
  options: { timeoutMs?: number } = {},
): Promise<T> => {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await db.prisma.$transaction(
        async (tx) => {
          await tx.$executeRaw`SELECT set_config('app.academy_id', ${academyId}::uuid::text, true)`;
          return work(tx);
        },
        { timeout: options.timeoutMs ?? 10_000, maxWait: 5_000 },
      );
    } catch (error) {
      if (attempt >= attemptsAtMost || !isWorthRetrying(error)) throw error;
    }
  }
};
