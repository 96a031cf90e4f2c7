import { describe, expect, it } from 'vitest';
import { instantFormat } from './instant-format.ts';

describe('an instant in a zone', () => {
  const at = new Date('2026-03-28T23:30:00Z');

  it('is written by the clock of the zone, each kind in its own way', () => {
    // Stockholm is an hour ahead until 29 March 2026, 01:00 UTC (IANA time zone database).
    expect(instantFormat('moment', 'Europe/Stockholm').format(at)).toBe('Sun 29 Mar, 00:30');
    expect(instantFormat('day', 'America/New_York').format(at)).toBe('Sat 28 Mar');
    expect(instantFormat('clock', 'UTC').format(at)).toBe('23:30');
  });

  it('is made once for a kind and a zone', () => {
    expect(instantFormat('day', 'UTC')).toBe(instantFormat('day', 'UTC'));
    expect(instantFormat('day', 'UTC')).not.toBe(instantFormat('clock', 'UTC'));
  });
});
