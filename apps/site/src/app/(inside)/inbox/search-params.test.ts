import { expect, it } from 'vitest';
import { filterOf, pathOf, queryOf } from './search-params.ts';

it('keeps the filter in the address and drops what it does not know', () => {
  const filter = filterOf({ fault: 'fat', claimed: 'somebody', kind: 'nothing', search: ' ida ' });
  expect(filter).toEqual({ fault: 'fat', claimed: null, kind: null, search: 'ida', after: null });
  expect(queryOf(filter)).toEqual({ fault: 'fat', search: 'ida' });
  expect(pathOf(filter)).toBe('/inbox?fault=fat&search=ida');
  expect(queryOf(filterOf({ kind: 'question' }))).toEqual({ kind: 'question' });
  expect(pathOf(filterOf({}))).toBe('/inbox');
});
