import { expect, it } from 'vitest';
import { correctDraftOf, correctionOf } from './correction.ts';
import { takeBack, tap } from './draft.ts';
import type { Submission } from './use-submission.ts';

const none = { solid: 0, fat: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 };
const sent = {
  club: '7-iron',
  lie: 'mat',
  tally: { ...none, balls: 10, solid: 3, fat: 6, counted: true },
  startLine: 'straight',
  curve: 'none',
  typical: 'usual',
  student: { hand: 'right' },
  clips: [{ id: 'a', fileName: 'a.mov', view: 'face-on', swingLength: 'full' }],
} as unknown as Submission;

it('sends nothing where nothing was changed', () => {
  expect(correctionOf(sent, correctDraftOf(sent))).toBeNull();
});

it('sends what was changed and nothing else', () => {
  const draft = correctDraftOf(sent);
  const [clip] = draft.clips;
  expect(correctionOf(sent, { ...draft, club: '8-iron', hand: 'left' })).toEqual({
    club: '8-iron',
    hand: 'left',
  });
  expect(correctionOf(sent, tap(draft, 'shank'))?.tally).toMatchObject({ balls: 10, fat: 6, shank: 1 });
  expect(correctionOf(sent, takeBack(tap(draft, 'shank')))).toBeNull();
  if (clip === undefined) throw new Error('There is a clip.');
  expect(correctionOf(sent, { ...draft, clips: [{ ...clip, view: 'down-the-line' }] })).toEqual({
    clips: [{ id: 'a', view: 'down-the-line', swingLength: 'full' }],
  });
});
