import { expect, it } from 'vitest';
import { nextChunkBytes } from './chunk-size.ts';

const MIB = 2 ** 20;

it.each([
  ['one bar of signal', MIB, 20_000, MIB],
  ['just below two MiB a second', MIB, 501, MIB],
  ['two MiB a second', MIB, 500, 8 * MIB],
  ['a large chunk that went well', 8 * MIB, 3_000, 8 * MIB],
  ['a large chunk after the signal fell', 8 * MIB, 30_000, MIB],
  ['a clock that stood still', MIB, 0, MIB],
])('%s', (_, bytes, tookMs, next) => {
  expect(nextChunkBytes(bytes, tookMs)).toBe(next);
});
