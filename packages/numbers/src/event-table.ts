/** When somebody was last seen, and what happened then: an event's name, or null for still open. */
export type Followed<Event extends string = string> = {
  /** In whatever unit, 0 or more. */
  readonly time: number;
  readonly event: Event | null;
};

export type EventRow = {
  readonly time: number;
  /** Still followed just before this time. */
  readonly atRisk: number;
  readonly events: number;
  readonly byEvent: ReadonlyMap<string, number>;
};

/** More people than any academy follows. */
const mostFollowed = 1_000_000;

/**
 * Times at which something happened, in order, with how many were still at risk. Who leaves open at a time was still at
 * risk then.
 *
 * @throws RangeError on nobody, too many, or a time that is not finite and >= 0
 */
export function eventTable(followed: readonly Followed[]): readonly EventRow[] {
  if (followed.length === 0) throw new RangeError('Nobody was followed.');
  if (followed.length > mostFollowed) throw new RangeError(`${followed.length} people are too many.`);
  const wrong = followed.findIndex(({ time }) => !(time >= 0 && Number.isFinite(time)));
  if (wrong >= 0) throw new RangeError(`Person ${wrong + 1} has no time: ${String(followed[wrong]?.time)}.`);
  const sorted = followed.toSorted((a, b) => a.time - b.time);
  const rows: EventRow[] = [];
  for (let i = 0; i < sorted.length; ) {
    const time = sorted[i]?.time ?? 0;
    const byEvent = new Map<string, number>();
    const atRisk = sorted.length - i;
    let events = 0;
    for (; i < sorted.length && sorted[i]?.time === time; i += 1) {
      const event = sorted[i]?.event;
      if (event === null || event === undefined) continue;
      byEvent.set(event, (byEvent.get(event) ?? 0) + 1);
      events += 1;
    }
    if (events > 0) rows.push({ time, atRisk, events, byEvent });
  }
  return rows;
}
