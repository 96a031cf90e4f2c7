import type { PracticeEntry } from './entry.ts';

/** Days after which what is still there has been learned: the first ten balls, without the drill before them. */
export const retentionDays = 2;

const dayMs = 86_400_000;
const dayOf = (localDate: string): number => {
  const day = Date.parse(`${localDate}T00:00:00Z`);
  if (Number.isNaN(day)) throw new RangeError(`"${localDate}" is no day.`);
  return day / dayMs;
};

/**
 * Whether the first ten balls of today count as a retention check: two days or more after the last practice.
 *
 * @param entries - in the order they were logged
 * @param today - the student's own calendar day, YYYY-MM-DD
 * @throws RangeError on a day that is none
 * @source judged on retention, not on the day (Guadagnoli et al., video feedback); 48 hours are common practice
 */
export const retentionCheckDue = (
  entries: readonly Pick<PracticeEntry, 'localDate'>[],
  today: string,
): boolean => {
  const last = entries.at(-1);
  return last !== undefined && dayOf(today) - dayOf(last.localDate) >= retentionDays;
};
