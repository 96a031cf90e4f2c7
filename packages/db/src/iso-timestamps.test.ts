import { types } from 'pg';
import { describe, expect, it } from 'vitest';
import { isoOf, isoTimestamps } from './iso-timestamps.ts';

describe('an instant as PostgreSQL writes it', () => {
  // The reference is pg's own reader of the type, whatever the fraction and the zone of the session.
  it.each([
    '2026-03-10 08:00:00+00',
    '2026-03-10 08:00:00.5+00',
    '2026-03-10 08:00:00.05+00',
    '2026-03-10 08:00:00.123+00',
    '2026-12-31 23:59:59.999+00',
    '2026-03-10 09:00:00.25+01',
    '2026-03-10 13:45:00+05:45',
    '2026-03-10 03:00:00-05',
    '0044-03-15 12:00:00+00 BC',
  ])('%s is the same instant', (written) => {
    const read = types.getTypeParser(types.builtins.TIMESTAMPTZ)(written) as Date;
    expect(isoOf(written)).toBe(read.toISOString());
  });

  it('is cut to milliseconds, as Date keeps them', () => {
    expect(isoOf('2026-03-10 08:00:00.123987+00')).toBe('2026-03-10T08:00:00.123Z');
  });

  it('touches no other type', () => {
    expect(isoTimestamps.getTypeParser(types.builtins.INT4)('7')).toBe(7);
    expect(isoTimestamps.getTypeParser(types.builtins.JSONB)('{"a":1}')).toEqual({ a: 1 });
    expect(isoTimestamps.getTypeParser(types.builtins.TIMESTAMPTZ)('2026-03-10 08:00:00+00')).toBe(
      '2026-03-10T08:00:00.000Z',
    );
  });
});
