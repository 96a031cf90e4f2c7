const memberOf = (of: unknown, key: string): unknown =>
  typeof of === 'object' && of !== null ? Reflect.get(of, key) : undefined;

/** Whether a statement gave up waiting for a lock: 55P03 lock_not_available (PostgreSQL, appendix A). */
export const waitedTooLong = (error: unknown): boolean => {
  for (let at: unknown = error, depth = 0; at !== undefined && at !== null && depth < 6; depth += 1) {
    for (const key of ['code', 'originalCode']) if (memberOf(at, key) === '55P03') return true;
    at = memberOf(at, 'cause') ?? memberOf(memberOf(at, 'meta'), 'driverAdapterError');
  }
  return false;
};
