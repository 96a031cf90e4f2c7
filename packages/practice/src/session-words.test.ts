import { expect, it } from 'vitest';
import { sessionPlan } from './session-plan.ts';
import { sessionWords } from './session-words.ts';

it('says when, how many, what to film, and what comes after', () => {
  expect(sessionWords(sessionPlan('brush', 25), { daysPerWeek: 3, minutes: 20 })).toEqual([
    'Three days a week, 20 minutes each time.',
    'Blocks of 10, 10 and 5 swings, with a minute of rest after each.',
    'Film one swing of three and look at it before the next.',
  ]);
  const full = sessionWords(sessionPlan('full', 8), { daysPerWeek: null, minutes: 15 });
  expect(full[0]).toBe('15 minutes each time.');
  expect(full[1]).toBe('8 swings, without haste.');
  expect(full.at(-1)).toContain('leave a day free');
});
