import { expect, it } from 'vitest';
import { filterOf, pathOf, queryOf } from './search-params.ts';

it('keeps the standing in the address and drops what it does not know', () => {
  const filter = filterOf({ standing: 'trial' });
  expect(queryOf(filter)).toEqual({ standing: 'trial' });
  expect(pathOf(filter)).toBe('/students?standing=trial');
  expect(pathOf(filterOf({ standing: 'rich' }))).toBe('/students');
});
