import { expect, it } from 'vitest';
import { ownPath } from './first-page.ts';

it.each([
  ['/send', '/send'],
  ['/review/abc?x=1', '/review/abc?x=1'],
  [undefined, '/'],
  ['https://elsewhere.example', '/'],
  ['//elsewhere.example', '/'],
  ['/\\elsewhere.example', '/'],
  ['/a b', '/'],
])('returns only to paths of this site: %s', (next, path) => {
  expect(ownPath(next)).toBe(path);
});
