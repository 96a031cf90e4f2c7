import { expect, it } from 'vitest';
import { filterOf, pathOf, queryOf } from './search-params.ts';

it('keeps the filter in the address and drops what it does not know', () => {
  const filter = filterOf({ fault: 'fat', claimed: 'somebody' });
  expect(filter).toEqual({ fault: 'fat', claimed: null, after: null });
  expect(queryOf(filter)).toEqual({ fault: 'fat' });
  expect(pathOf(filter)).toBe('/inbox?fault=fat');
  expect(pathOf(filterOf({}))).toBe('/inbox');
});
