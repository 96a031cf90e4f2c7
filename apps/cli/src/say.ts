/** Progress for a person who waits: one line each. */
export function say(text: string): void {
  process.stdout.write(`${text}\n`);
}

/** Seconds with one decimal since a reading of `performance.now()`. */
export function secondsSince(sinceMs: number): string {
  return `${((performance.now() - sinceMs) / 1000).toFixed(1)} s`;
}

/** A terminal that went away must not end us in the middle of an orderly stop. */
export function survivesLostTerminal(): void {
  for (const stream of [process.stdout, process.stderr]) stream.on('error', () => undefined);
}
