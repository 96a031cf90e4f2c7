const format = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' });

/** A calendar day, YYYY-MM-DD, in words: it is the same day everywhere. */
export const localDayInWords = (day: string): string => format.format(new Date(`${day}T00:00:00Z`));

const withYear = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  timeZone: 'UTC',
});

/** The same with its year, for what is kept for long. */
export const localDateInWords = (day: string): string => withYear.format(new Date(`${day}T00:00:00Z`));
