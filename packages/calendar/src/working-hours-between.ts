import { Temporal } from 'temporal-polyfill';
import { openStretchesOn, type WorkingHours } from './working-hours.ts';
import { onWall } from './zoned.ts';

const hourMs = 3_600_000;

/**
 * Working hours that pass between two instants; negative when `to` lies before `from`.
 *
 * @throws RangeError on an invalid date or an unknown zone
 */
export const workingHoursBetween = (from: Date, to: Date, working: WorkingHours): number => {
  if (to < from) return -workingHoursBetween(to, from, working);
  let day = onWall(from, working.zone).toPlainDate();
  const lastDay = onWall(to, working.zone).toPlainDate();
  let workedMs = 0;
  while (Temporal.PlainDate.compare(day, lastDay) <= 0) {
    for (const { fromMs, toMs } of openStretchesOn(day, working)) {
      workedMs += Math.max(0, Math.min(to.getTime(), toMs) - Math.max(from.getTime(), fromMs));
    }
    day = day.add({ days: 1 });
  }
  return workedMs / hourMs;
};
