import { types } from 'pg';

const timestamptz = types.builtins.TIMESTAMPTZ;
/** As PostgreSQL writes an instant to a session in UTC (manual, 8.5.2, style ISO): to milliseconds, none if there are none. */
const inUtc = /^(\d{4}-\d\d-\d\d) (\d\d:\d\d:\d\d)(?:\.(\d{1,6}))?\+00$/;

/** An instant as PostgreSQL wrote it, as `Date.toISOString` writes it: cut to milliseconds. */
export const isoOf = (written: string): string => {
  const parts = inUtc.exec(written);
  // Other zones, and years before 1 or after 9999, go the slower way.
  if (parts === null) return (types.getTypeParser(timestamptz)(written) as Date).toISOString();
  return `${parts[1]}T${parts[2]}.${(parts[3] ?? '').padEnd(3, '0').slice(0, 3)}Z`;
};

/** Reads instants as text, for rows that are only passed on: making a `Date` of each and text again costs more than the rest. */
export const isoTimestamps: { readonly getTypeParser: typeof types.getTypeParser } = {
  getTypeParser: ((oid: number, format?: 'text' | 'binary') =>
    oid === timestamptz && format !== 'binary'
      ? isoOf
      : types.getTypeParser(oid, format as 'text')) as typeof types.getTypeParser,
};
