import { expect, it } from 'vitest';
import { asksFirst, judgeClip } from './judge-clip.ts';

const good = { durationS: 2.2, widthPx: 720, heightPx: 1280, fps: 240, light: 0.5 };

it('finds nothing wrong with a good clip, nor with one whose light it could not see', () => {
  expect(judgeClip(good)).toEqual([]);
  expect(judgeClip({ ...good, light: null })).toEqual([]);
});

it('names what is wrong', () => {
  expect(judgeClip({ ...good, durationS: 0.4, light: 0.05 })).toEqual(['too-short', 'too-dark']);
  expect(judgeClip({ ...good, durationS: 1200, widthPx: 1920, heightPx: 1080 })).toEqual([
    'too-long',
    'not-portrait',
  ]);
});

it('asks before the upload only about what spoils the whole clip', () => {
  const slow = judgeClip({ ...good, fps: 30 });
  expect(slow).toEqual(['low-rate']);
  expect(asksFirst(slow)).toBe(false);
  expect(asksFirst(['low-rate', 'too-dark'])).toBe(true);
});
