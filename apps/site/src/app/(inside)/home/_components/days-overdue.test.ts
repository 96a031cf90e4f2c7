import { expect, it } from 'vitest';
import { daysOverdue } from './days-overdue.ts';

it.each([
  ['2026-11-09T08:00:00Z', '2026-11-08T20:00:00Z', 'Europe/London', -1],
  ['2026-11-09T08:00:00Z', '2026-11-09T23:30:00Z', 'Europe/London', 0],
  ['2026-11-09T08:00:00Z', '2026-11-10T00:10:00Z', 'Europe/London', 1],
  // In Auckland it is the next day already at noon UTC.
  ['2026-11-09T08:00:00Z', '2026-11-09T12:00:00Z', 'Pacific/Auckland', 1],
  ['2026-10-24T08:00:00Z', '2026-10-26T08:00:00Z', 'Europe/London', 2],
])('counts days from %s at %s in %s: %i', (due, now, zone, days) => {
  expect(daysOverdue(due, new Date(now), zone)).toBe(days);
});
