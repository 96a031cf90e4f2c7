/** PostgreSQL, appendix A: cancelled, lock or connection refused, shutting down, serialization and deadlock. */
const sqlStates = /^(57014|55P03|25P03|53\w{3}|57P0\w|40001|40P01|08\w{3})$/;
/** Prisma: cannot reach, pool or transaction timed out, connection closed, write conflict. */
const prismaCodes = new Set(['P1001', 'P1002', 'P1008', 'P1017', 'P2024', 'P2028', 'P2034', 'P2037']);
const socketCodes = new Set(['ECONNREFUSED', 'ECONNRESET', 'ETIMEDOUT', 'EPIPE', 'EAI_AGAIN', 'ENOTFOUND']);
/** The pool and the client give these no code. */
const poolWords =
  /timeout exceeded when trying to connect|connection terminated|query read timeout|pool after calling end/i;

const at = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;

/** Whether a request failed only because the database was too busy or away: worth trying again in a moment. */
export const databaseIsBusy = (error: unknown): boolean => {
  const seen = new Set<unknown>();
  for (let it = error; it !== undefined && it !== null && !seen.has(it); ) {
    seen.add(it);
    for (const key of ['code', 'originalCode', 'sqlState']) {
      const code = at(it, key);
      if (typeof code !== 'string') continue;
      if (sqlStates.test(code) || prismaCodes.has(code) || socketCodes.has(code)) return true;
    }
    const message = at(it, 'message');
    if (typeof message === 'string' && poolWords.test(message)) return true;
    it = at(it, 'cause') ?? at(at(it, 'meta'), 'driverAdapterError');
  }
  return false;
};
