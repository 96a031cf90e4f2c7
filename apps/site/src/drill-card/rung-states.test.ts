import { drillById } from '@ballfirst/library/drills';
import { expect, it } from 'vitest';
import { rungStates } from './rung-states.ts';

const drill = { ladder: drillById('flat-towel').ladder.slice(0, 3) };
const states = (rung: string, status: 'open' | 'done') =>
  rungStates({ rung, status, drill }).map(({ state }) => state);

it('says which steps are passed, where the student is and what comes later', () => {
  expect(states('rehearsal', 'open')).toEqual(['here', 'later', 'later']);
  expect(states('hip-high', 'open')).toEqual(['passed', 'passed', 'here']);
  expect(states('hip-high', 'done')).toEqual(['passed', 'passed', 'passed']);
});
