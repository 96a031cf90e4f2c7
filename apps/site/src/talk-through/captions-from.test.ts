import { expect, it } from 'vitest';
import { captionAt, captionsFrom, captionText } from './captions-from.ts';

it('takes the time that a line begins with', () => {
  expect(captionsFrom('0:00 Look at the ball.\n\n  0:12 Then the hips. ', 30_000)).toEqual([
    { atMs: 0, words: 'Look at the ball.' },
    { atMs: 12_000, words: 'Then the hips.' },
  ]);
});

it('spreads lines without a time by their length', () => {
  expect(captionsFrom('aaaa\nbb\ncc', 8_000).map(({ atMs }) => atMs)).toEqual([0, 4_000, 6_000]);
  expect(captionsFrom('aaaa\nbbbb\n0:06 cc\ndd', 10_000).map(({ atMs }) => atMs)).toEqual([
    0, 3_000, 6_000, 8_000,
  ]);
});

it('never runs back nor past the end', () => {
  expect(captionsFrom('0:09 a\n0:03 b\n9:00 c', 10_000).map(({ atMs }) => atMs)).toEqual([
    9_000, 9_000, 10_000,
  ]);
  expect(captionsFrom(' \n', 10_000)).toEqual([]);
});

it('is written as it is read', () => {
  const captions = captionsFrom('0:00 Look.\n1:05 There.', 90_000);
  expect(captionText(captions)).toBe('0:00 Look.\n1:05 There.');
  expect([captionAt(captions, 64_999), captionAt(captions, 65_000)]).toEqual(['Look.', 'There.']);
  expect(captionAt(captionsFrom('0:03 Late.', 9_000), 1_000)).toBeNull();
});
