import { refusalCodes } from '@ballfirst/media/header/refusals';
import { refusalWords } from '@ballfirst/services/clips/refusal-words';
import { expect, it } from 'vitest';

const plainest = refusalWords('of no kind we know');

it.each(refusalCodes)('%s has words of its own that say what to do, without a word of the trade', (code) => {
  const words = refusalWords(code);
  expect(words).not.toBe(plainest);
  expect(words).toMatch(/Choose|Film|Send|Cut|film again/);
  expect(words).not.toMatch(/codec|container|H\.264|HEVC|metadata|_|null|error/i);
});
