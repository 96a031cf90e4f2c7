import { expect, it } from 'vitest';
import { gripWords } from '../words/grip.ts';
import { photoTrouble } from './photo-input.tsx';

it.each([
  ['hands.jpg', 'image/jpeg', 900, null],
  ['hands.webp', 'image/webp', 900, null],
  ['hands.HEIC', '', 900, gripWords.heic],
  ['hands.heic', 'image/heic', 900, gripWords.heic],
  ['hands.jpg', 'video/mp4', 900, gripWords.notPhoto],
  ['hands.svg', 'image/svg+xml', 900, gripWords.notPhoto],
  ['hands.jpg', 'image/jpeg', 0, gripWords.empty],
  ['hands.png', 'image/png', 20 * 1024 * 1024 + 1, gripWords.tooLarge],
])('%s as %s of %d bytes', (name, type, size, words) => {
  expect(photoTrouble({ name, type, size })).toBe(words);
});
