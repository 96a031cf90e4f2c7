import { describe, expect, it } from 'vitest';
import { chooseReminders } from './reminders.ts';

const told = (quiet: unknown) => chooseReminders.body?.safeParse({ reminders: true, quiet });

describe('quiet hours as they are told', () => {
  it.each([null, { from: '21:00', to: '09:00' }, { from: '09:00', to: '21:00' }])('may be %j', (quiet) => {
    expect(told(quiet)?.success).toBe(true);
  });

  it.each([
    [{ from: '08:15', to: '08:15' }, /two different times/],
    [{ from: '24:00', to: '09:00' }, /time of the day/],
    [{ from: '', to: '09:00' }, /time of the day/],
  ])('are refused in words: %j', (quiet, words) => {
    expect(told(quiet)?.error?.issues[0]?.message).toMatch(words);
  });
});
