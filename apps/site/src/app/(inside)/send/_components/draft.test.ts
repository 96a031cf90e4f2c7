import { expect, it } from 'vitest';
import { behindHelps } from './behind-helps.ts';
import { afterSending, bodyOf, emptyDraft, setBalls, takeBack, tallyOf, tap } from './draft.ts';
import { rungLengthOf } from './rung-length.ts';
import { largeButtons, otherButtons } from './tally-buttons.ts';

const ten = Array.from({ length: 10 }).reduce<typeof emptyDraft>((draft) => tap(draft, 'fat'), emptyDraft);
const clip = (clipId: string) => ({
  fileName: 'a.mov',
  clipId,
  done: true,
  facts: { view: 'face-on', swingLength: 'full' } as const,
});

it('never counts more balls than the set has', () => {
  expect(tallyOf(tap(ten, 'solid'))).toMatchObject({ balls: 10, fat: 10, solid: 0 });
  expect(setBalls(ten, 6).balls).toBe(10);
  expect(tallyOf(tap(setBalls(ten, 11), 'solid'))).toMatchObject({ balls: 11, fat: 10, solid: 1 });
});

it('takes the last ball back', () => {
  expect(tallyOf(takeBack(tap(tap(emptyDraft, 'thin'), 'fat')))).toMatchObject({ thin: 1, fat: 0 });
});

it('sends no pain note without pain, every clip, and the swing length of the drill unless another was said', () => {
  const clips = { 'face-on': clip('a'), 'down-the-line': clip('b') };
  const draft = { ...ten, clips, pain: 'none' as const, painNote: 'left over' };
  expect(bodyOf(draft, 'hip-high', null)).toMatchObject({
    pain: 'none',
    painNote: '',
    clipIds: ['a', 'b'],
    swingLength: 'hip-high',
  });
  expect(bodyOf(draft, 'full', null).gripPhotoId).toBeNull();
  const photo = { fileName: 'hands.jpg', clipId: 'p', done: false };
  expect(bodyOf({ ...draft, photo }, 'full', null).gripPhotoId).toBe('p');
  expect(afterSending({ ...draft, photo }, 's')).toMatchObject({ photo, sentId: 's' });
  expect(bodyOf({ ...draft, swingLength: 'full' }, 'hip-high', null).swingLength).toBe('full');
});

it('asks for the view from behind where the miss shows there', () => {
  expect(behindHelps(ten)).toBe(false);
  expect(behindHelps({ ...ten, curve: 'right' })).toBe(true);
  expect(behindHelps({ ...ten, startLine: 'left' })).toBe(true);
  expect(behindHelps({ ...ten, taps: ['solid', 'solid', 'shank', 'fat'] })).toBe(true);
  expect(behindHelps({ ...ten, taps: ['toe', 'fat', 'fat', 'fat'] })).toBe(false);
});

it('has every outcome on a button once, whatever the club', () => {
  for (const club of ['driver', '7-iron'] as const) {
    const all = [...largeButtons(club), ...otherButtons(club)];
    expect(new Set(all).size).toBe(8);
    expect(largeButtons(club)).toHaveLength(4);
  }
  expect(largeButtons('driver')).toContain('sky');
});

it('begins with the swing length of the present step of the drill', () => {
  expect(rungLengthOf('three-quarter')).toBe('three-quarter');
  expect(rungLengthOf('brush')).toBe('hip-high');
  expect(rungLengthOf(null)).toBeNull();
  expect(rungLengthOf('of another age')).toBeNull();
});
