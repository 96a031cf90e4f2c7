const check = (servers: number, load: number) => {
  if (!Number.isInteger(servers) || servers < 1 || servers > 100_000) {
    throw new RangeError('Servers are a whole number from 1 to 100,000.');
  }
  if (!(load >= 0 && Number.isFinite(load))) throw new RangeError('The load is 0 or more.');
};

/**
 * Erlang B: the chance that all servers are busy where nobody waits.
 *
 * @param servers - whole number, 1..100,000
 * @param load - arrivals times mean service time, in erlangs, >= 0
 * @throws RangeError on a load or servers out of range
 * @source Erlang 1917, by the usual recursion B(n) = a B(n-1) / (n + a B(n-1))
 * @example erlangB(5, 3) // 0.110054
 */
export function erlangB(servers: number, load: number): number {
  check(servers, load);
  let blocked = 1;
  for (let n = 1; n <= servers; n += 1) blocked = (load * blocked) / (n + load * blocked);
  return blocked;
}

/**
 * Erlang C: the chance that an arrival has to wait where everybody waits as long as needed. A reference for tests only:
 * coaches have working hours, which it does not know.
 *
 * @returns 0..1; 1 when the load fills all servers
 * @throws RangeError on a load or servers out of range
 * @source Erlang 1917
 * @example erlangC(5, 3) // 0.236152
 */
export function erlangC(servers: number, load: number): number {
  check(servers, load);
  if (load >= servers) return 1;
  const blocked = erlangB(servers, load);
  return blocked / (1 - (load / servers) * (1 - blocked));
}
