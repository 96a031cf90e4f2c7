import { type LocalTime, onWall } from './zoned.ts';

/** The time 'HH:MM' a person in `zone` reads at that instant. @throws RangeError on an unknown zone. */
export const localTime = (instant: Date, zone: string): LocalTime =>
  onWall(instant, zone).toPlainTime().toString({ smallestUnit: 'minute', roundingMode: 'trunc' });
