/** 40001 serialization_failure and 40P01 deadlock_detected (PostgreSQL, appendix A); P2034 is Prisma's word for both. */
const codes = new Set(['40001', '40P01', 'P2034']);

const textOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;

/** Whether the database gave up only because of others, so that the same transaction may well succeed when run again. */
export const isWorthRetrying = (error: unknown): boolean => {
  const seen = new Set<unknown>();
  for (let at: unknown = error; at !== undefined && at !== null && !seen.has(at); ) {
    seen.add(at);
    for (const key of ['code', 'originalCode', 'sqlState']) {
      const code = textOf(at, key);
      if (typeof code === 'string' && codes.has(code)) return true;
    }
    if (textOf(at, 'kind') === 'TransactionWriteConflict') return true;
    at = textOf(at, 'cause') ?? textOf(textOf(at, 'meta'), 'driverAdapterError');
  }
  return false;
};
