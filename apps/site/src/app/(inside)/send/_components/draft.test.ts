import { expect, it } from 'vitest';
import { bodyOf, emptyDraft, setBalls, takeBack, tallyOf, tap } from './draft.ts';

const ten = Array.from({ length: 10 }).reduce<typeof emptyDraft>((draft) => tap(draft, 'fat'), emptyDraft);

it('never counts more balls than the set has', () => {
  expect(tallyOf(tap(ten, 'solid'))).toMatchObject({ balls: 10, fat: 10, solid: 0 });
  expect(setBalls(ten, 6).balls).toBe(10);
  expect(tallyOf(tap(setBalls(ten, 11), 'solid'))).toMatchObject({ balls: 11, fat: 10, solid: 1 });
});

it('takes the last ball back', () => {
  expect(tallyOf(takeBack(tap(tap(emptyDraft, 'thin'), 'fat')))).toMatchObject({ thin: 1, fat: 0 });
});

it('sends no pain note without pain', () => {
  const draft = { ...ten, pain: 'none' as const, painNote: 'left over' };
  expect(bodyOf(draft, ['c'], null)).toMatchObject({ pain: 'none', painNote: '', clipIds: ['c'] });
});
