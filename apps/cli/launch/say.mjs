/** A failure a person can act on: its message is the one sentence that is printed. */
export class Sentence extends Error {}

/** @param {string} text */
export function say(text) {
  process.stdout.write(`${text}\n`);
}

/**
 * Seconds with one decimal, for progress lines.
 * @param {number} sinceMs a value of `performance.now()`
 */
export function secondsSince(sinceMs) {
  return `${((performance.now() - sinceMs) / 1000).toFixed(1)} s`;
}
