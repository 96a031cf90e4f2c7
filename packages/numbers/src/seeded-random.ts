/**
 * A small seeded generator (sfc32): the same seed gives the same numbers everywhere, a browser included.
 *
 * @param seed - any whole number; only its low 32 bits count
 * @returns a function that gives the next number, 0 <= x < 1, with 32 bits
 * @throws RangeError when the seed is not a whole number
 * @source Doty-Humphrey, PractRand (sfc32); not for secrets
 * @example const random = seededRandom(7); random() // the same number every time
 */
export function seededRandom(seed: number): () => number {
  if (!Number.isSafeInteger(seed)) throw new RangeError('A seed is a whole number.');
  let a = 0x9e3779b9;
  let b = 0x243f6a88;
  let c = seed | 0;
  let counter = 1;
  const next = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let warm = 0; warm < 15; warm += 1) next();
  return next;
}
