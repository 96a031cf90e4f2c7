type Week = { readonly week: string; readonly balls: number; readonly clean: number; readonly days: number };

const dayMs = 86_400_000;
const mondayOf = (day: string): string => {
  const at = new Date(`${day}T00:00:00Z`);
  const sinceMonday = (at.getUTCDay() + 6) % 7;
  return new Date(at.getTime() - sinceMonday * dayMs).toISOString().slice(0, 10);
};
const weekBefore = (monday: string): string =>
  new Date(Date.parse(`${monday}T00:00:00Z`) - 7 * dayMs).toISOString().slice(0, 10);

/**
 * The newest weeks without a gap, newest first: a week in which nothing was done stands as empty.
 *
 * @param weeks - newest first, each by its Monday, YYYY-MM-DD
 * @param today - the reader's day: its week is the newest, unless a later one was counted
 * @param most - so many weeks at most, 1 or more
 */
export const everyWeek = (weeks: readonly Week[], today: string, most: number): Week[] => {
  const [newest] = weeks;
  const oldest = weeks.at(-1);
  if (newest === undefined || oldest === undefined) return [];
  const byWeek = new Map(weeks.map((week) => [week.week, week]));
  const filled: Week[] = [];
  let week = mondayOf(today);
  if (newest.week > week) week = newest.week;
  while (filled.length < most && week >= oldest.week) {
    filled.push(byWeek.get(week) ?? { week, balls: 0, clean: 0, days: 0 });
    week = weekBefore(week);
  }
  return filled;
};
