import { horizonDays, openStretchesOn, type WorkingHours } from './working-hours.ts';
import { onWall } from './zoned.ts';

const hourMs = 3_600_000;

/**
 * The latest instant from which so many working hours still pass until `instant`: an answer-by moved ahead by a head
 * start. Zero hours leave the instant where it is.
 *
 * @param hours - working hours, >= 0, fractions allowed
 * @throws RangeError on negative hours, or where the academy was closed for three years on end
 * @example workBefore(mondayAtTen, 2, nineToFive) // Friday at four
 */
export const workBefore = (instant: Date, hours: number, working: WorkingHours): Date => {
  if (!(hours >= 0 && hours < Number.POSITIVE_INFINITY))
    throw new RangeError('Working hours are zero or more.');
  let leftMs = Math.round(hours * hourMs);
  if (leftMs === 0) return new Date(instant);
  const endMs = instant.getTime();
  let day = onWall(instant, working.zone).toPlainDate();
  for (let idle = 0; idle < horizonDays; idle += 1) {
    for (const stretch of openStretchesOn(day, working).toReversed()) {
      const toMs = Math.min(endMs, stretch.toMs);
      if (toMs <= stretch.fromMs) continue;
      if (toMs - stretch.fromMs >= leftMs) return new Date(toMs - leftMs);
      leftMs -= toMs - stretch.fromMs;
      idle = 0;
    }
    day = day.subtract({ days: 1 });
  }
  throw new RangeError('No working hours in sight: every day is closed.');
};
