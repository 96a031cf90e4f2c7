import { expect, it } from 'vitest';
import { holdsAll } from '../../launch/installed.mjs';

const wanted = {
  packages: {
    '': {},
    'apps/api': { version: '0.1.0' },
    'node_modules/@ballfirst/api': { link: true, resolved: 'apps/api' },
    'node_modules/a': { version: '1.0.0' },
    'node_modules/for-another-machine': { version: '2.0.0', optional: true },
  },
};
const links = { 'node_modules/@ballfirst/api': { link: true, resolved: 'apps/api' } };

it.each([
  ['everything', { ...links, 'node_modules/a': { version: '1.0.0' } }, true],
  [
    'everything and more',
    { ...links, 'node_modules/a': { version: '1.0.0' }, 'node_modules/b': { version: '1.0.0' } },
    true,
  ],
  ['another version', { ...links, 'node_modules/a': { version: '1.0.1' } }, false],
  ['a missing package', links, false],
  ['a missing member of this repository', { 'node_modules/a': { version: '1.0.0' } }, false],
  [
    'an optional package in another version',
    {
      ...links,
      'node_modules/a': { version: '1.0.0' },
      'node_modules/for-another-machine': { version: '1.9.0' },
    },
    false,
  ],
])('judges node_modules with %s', (_, packages, expected) => {
  expect(holdsAll(wanted, { packages })).toBe(expected);
});
