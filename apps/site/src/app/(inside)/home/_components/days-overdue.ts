const dayNumber = (at: Date, zone: string): number => {
  const day = new Intl.DateTimeFormat('en-CA', { timeZone: zone }).format(at);
  return Date.parse(`${day}T00:00:00Z`) / 86_400_000;
};

/** Whole calendar days in `zone` since the day of an instant; 0 on that day, negative before. */
export const daysOverdue = (dueAt: string, now: Date, zone: string): number =>
  dayNumber(now, zone) - dayNumber(new Date(dueAt), zone);
