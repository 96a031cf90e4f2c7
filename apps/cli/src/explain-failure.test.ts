import { expect, it } from 'vitest';
import { explainFailure } from './explain-failure.ts';
import { Sentence } from './sentence.ts';

const failure = (code: string, message = '') => Object.assign(new Error(message), { code });

it.each([
  [failure('ENOSPC'), /disk .* full/],
  [failure('53100', 'could not extend file'), /disk .* full/],
  [new Error('initdb: could not write: No space left on device'), /disk .* full/],
  [failure('EACCES'), /cannot be written/],
  [failure('EROFS'), /cannot be written/],
  [failure('EMFILE'), /file handles/],
])('says what to do about %s', (given, expected) => {
  const told = explainFailure(given, '/data');
  expect(told).toBeInstanceOf(Sentence);
  expect((told as Sentence).message).toMatch(expected);
});

it('leaves what nobody foresaw', () => {
  const given = new TypeError('x is not a function');
  expect(explainFailure(given, '/data')).toBe(given);
});
