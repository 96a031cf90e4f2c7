import { type LocalTime, onWall, toDate, wallMoment } from './zoned.ts';

/** Hours in which nobody is written to, on the reader's wall clock; may run over midnight. Equal ends: none. */
export type QuietHours = { readonly zone: string; readonly from: LocalTime; readonly to: LocalTime };

/**
 * Moves an instant out of the quiet hours: to their end, or not at all when it lies outside them. The end itself is
 * no longer quiet. Never moves an instant back.
 *
 * @throws RangeError on an unknown zone or a broken time
 * @example quietShift(new Date('2026-01-05T23:00Z'), { zone: 'Europe/London', from: '21:00', to: '08:00' }) // 08:00 next day
 */
export const quietShift = (instant: Date, quiet: QuietHours): Date => {
  const here = onWall(instant, quiet.zone);
  const time = here.toPlainTime().toString({ smallestUnit: 'millisecond' });
  const { from, to } = quiet;
  if (from === to) return instant;
  const overMidnight = from > to;
  const inside = overMidnight ? time >= from || time < to : time >= from && time < to;
  if (!inside) return instant;
  const endDay = overMidnight && time >= from ? here.toPlainDate().add({ days: 1 }) : here.toPlainDate();
  const end = toDate(wallMoment(endDay, to, quiet.zone));
  // In the repeated hour of autumn the first end may lie behind us: then the second one counts.
  return end > instant ? end : toDate(wallMoment(endDay, to, quiet.zone, 'later'));
};
