import { expect, it } from 'vitest';
import { pagePath } from './page-path.ts';

it('keeps what was asked and leaves out what was not', () => {
  expect(pagePath('/students', { standing: 'trial', after: null })).toBe('/students?standing=trial');
  expect(pagePath('/mail', { after: null })).toBe('/mail');
});
