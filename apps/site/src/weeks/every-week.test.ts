import { expect, it } from 'vitest';
import { everyWeek } from './every-week.ts';

const week = (monday: string, balls = 10) => ({ week: monday, balls, clean: 5, days: 1 });
const days = (weeks: { week: string }[]) => weeks.map((one) => one.week);

it('shows a week in which nothing was done as empty', () => {
  const filled = everyWeek([week('2026-11-16'), week('2026-10-26')], '2026-11-25', 8);
  expect(days(filled)).toEqual(['2026-11-23', '2026-11-16', '2026-11-09', '2026-11-02', '2026-10-26']);
  expect(filled[0]).toMatchObject({ balls: 0, clean: 0, days: 0 });
  expect(filled[1]?.balls).toBe(10);
});

it('goes over the turn of the year and ends at the most that is shown', () => {
  expect(days(everyWeek([week('2026-01-05'), week('2025-01-06')], '2026-01-11', 3))).toEqual([
    ...['2026-01-05', '2025-12-29', '2025-12-22'],
  ]);
});

it('keeps a week that is counted ahead of the reader’s day, and has none where none was counted', () => {
  expect(days(everyWeek([week('2026-11-30')], '2026-11-25', 8))).toEqual(['2026-11-30']);
  expect(everyWeek([], '2026-11-25', 8)).toEqual([]);
});
