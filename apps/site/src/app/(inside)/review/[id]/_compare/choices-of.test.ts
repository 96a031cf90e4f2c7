import { expect, it } from 'vitest';
import { type Comparable, choicesOf, firstChoice } from './choices-of.ts';

const one = (
  id: string,
  given: Partial<Comparable> = {},
  view: 'face-on' | 'down-the-line' = 'face-on',
): Comparable => ({
  clip: {
    ...{ id, submissionId: null, fileName: 'swing.mp4', view, swingLength: 'full', status: 'ready' },
    ...{
      lengthBytes: 1,
      percent: 100,
      refusal: null,
      createdAt: '2026-03-01T00:00:00.000Z',
      suggestion: null,
    },
    picture: { widthPx: 720, heightPx: 1280, frames: 200, fps: 100, durationMs: 2000 },
    media: { rendition: '/r', poster: '/p', frameTimes: '/f', strip: null },
  } as Comparable['clip'],
  ...{ from: 'student', name: null, sentAt: '2026-03-01T00:00:00.000Z', club: '8-iron', hand: 'right' },
  ...{ balls: 10, solid: 4, last: false, best: false, marks: [] },
  ...given,
});
const items = [
  one('last', { last: true, sentAt: '2026-03-09T00:00:00.000Z', club: 'driver' }),
  one('best', { best: true, sentAt: '2026-03-05T00:00:00.000Z' }),
  one('older', { sentAt: '2026-03-03T00:00:00.000Z' }),
  one('behind', {}, 'down-the-line'),
  one('model', { from: 'collection', name: 'Weight ahead' }),
];
const ids = (groups: ReturnType<typeof choicesOf>) => groups.map(({ of }) => of.map(({ clip }) => clip.id));

it('groups the last and the best, the others by club, and the collection; one view at a time', () => {
  expect(ids(choicesOf(items, 'face-on'))).toEqual([['last', 'best'], ['older'], ['model']]);
  expect(ids(choicesOf(items, 'down-the-line'))).toEqual([['behind']]);
});

it('begins with the last swing of the same club, else with the last, else with the collection', () => {
  const groups = choicesOf(items, 'face-on');
  expect(firstChoice(groups, '8-iron')?.clip.id).toBe('best');
  expect(firstChoice(groups, 'wedge')?.clip.id).toBe('last');
  expect(firstChoice(choicesOf(items.slice(4), 'face-on'), 'wedge')?.clip.id).toBe('model');
  expect(firstChoice([], 'wedge')).toBeNull();
});
