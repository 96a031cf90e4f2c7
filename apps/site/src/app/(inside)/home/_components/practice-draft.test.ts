import { drillById } from '@ballfirst/library/drills';
import { expect, it } from 'vitest';
import type { Programme } from '../../../../drill-card/rung-states.ts';
import { freshPractice, keptPractice, practiceBody, withBalls } from './practice-draft.ts';

const { ladder } = drillById('flat-towel');
const programme = { rung: 'hip-high', drill: { id: 'flat-towel', ladder } } as unknown as Programme;

it('begins on the own step with its set of balls', () => {
  expect(freshPractice(programme)).toMatchObject({ rung: 'hip-high', balls: 10, clean: null, pain: null });
});

it('asks again for the clean ones when there are fewer balls', () => {
  const draft = { ...freshPractice(programme), clean: 8 };
  expect(withBalls(draft, 9, 60).clean).toBe(8);
  expect(withBalls(draft, 7, 60).clean).toBeNull();
  expect(withBalls(draft, 99, 60).balls).toBe(60);
});

it('is complete with the clean ones and the answer about pain', () => {
  const draft = { ...freshPractice(programme), clean: 0 };
  expect(practiceBody(draft)).toBeNull();
  expect(practiceBody({ ...draft, pain: 'none' })).toEqual({
    ...{ rung: 'hip-high', balls: 10, clean: 0, filmed: false, pain: 'none' },
  });
  expect(practiceBody({ ...draft, pain: 'none' }, 'line-brush')).toMatchObject({ drillId: 'line-brush' });
});

it('takes up what the device kept and drops what no longer fits', () => {
  const draft = { ...freshPractice(programme), clean: 6 };
  expect(keptPractice(JSON.stringify(draft), programme)).toEqual(draft);
  expect(keptPractice(JSON.stringify({ ...draft, rung: 'gone' }), programme)).toEqual(
    freshPractice(programme),
  );
  expect(keptPractice('{', programme)).toEqual(freshPractice(programme));
  expect(keptPractice(null, programme)).toEqual(freshPractice(programme));
});
