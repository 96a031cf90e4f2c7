import type { View } from '../marks/marks.ts';

const words: Readonly<Record<View, string>> = {
  'face-on': 'no scale yet: mark ball and grip end at address, or a stick on the target line',
  'down-the-line': 'no scale yet: mark ball or clubhead, and hands or grip end, at address',
};

/** What to mark for a scale. */
export const scaleWords = (view: View): string => words[view];
