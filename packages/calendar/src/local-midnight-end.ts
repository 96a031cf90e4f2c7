import { onWall, toDate } from './zoned.ts';

/**
 * The local midnight that ends the last day of a period. The day it starts on is day 1, so a period of 14 days that
 * starts on 1 March, at whatever hour, ends as 14 March turns into the 15th. Where a clock change removes midnight,
 * the first moment of the next day.
 *
 * @param period - startedAt, days (whole, >= 1), zone of the student
 * @throws RangeError on fewer than one day or a broken number
 */
export const localMidnightEnd = (period: {
  readonly startedAt: Date;
  readonly days: number;
  readonly zone: string;
}): Date => {
  if (!Number.isInteger(period.days) || period.days < 1)
    throw new RangeError('A period has at least one day.');
  const firstDay = onWall(period.startedAt, period.zone).toPlainDate();
  return toDate(firstDay.add({ days: period.days }).toZonedDateTime(period.zone));
};
