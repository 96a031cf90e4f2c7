import { horizonDays, openStretchesOn, type WorkingHours } from './working-hours.ts';
import { onWall } from './zoned.ts';

const hourMs = 3_600_000;

/**
 * The earliest instant by which so many working hours have passed since `instant`. Work that fills a day ends at
 * closing time, not at the next opening. Zero hours leave the instant where it is.
 *
 * @param hours - working hours, >= 0, fractions allowed
 * @throws RangeError on negative hours, or where the academy is closed for three years on end
 * @example addWorkingHours(fridayAtFour, 2, nineToFive) // Monday at ten
 */
export const addWorkingHours = (instant: Date, hours: number, working: WorkingHours): Date => {
  if (!(hours >= 0 && hours < Number.POSITIVE_INFINITY))
    throw new RangeError('Working hours are zero or more.');
  let leftMs = Math.round(hours * hourMs);
  if (leftMs === 0) return new Date(instant);
  const startMs = instant.getTime();
  let day = onWall(instant, working.zone).toPlainDate();
  for (let idle = 0; idle < horizonDays; idle += 1) {
    for (const stretch of openStretchesOn(day, working)) {
      const fromMs = Math.max(startMs, stretch.fromMs);
      if (stretch.toMs <= fromMs) continue;
      if (stretch.toMs - fromMs >= leftMs) return new Date(fromMs + leftMs);
      leftMs -= stretch.toMs - fromMs;
      idle = 0;
    }
    day = day.add({ days: 1 });
  }
  throw new RangeError('No working hours in sight: every day is closed.');
};
