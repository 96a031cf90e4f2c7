import { describe, expect, it } from 'vitest';
import { cursorOf, instantPlaceOf, pageOf, placeOf } from './keyset.ts';

const id = '01890a5d-ac96-774b-bcce-b302099a8057';

describe('a cursor', () => {
  it('gives back the place it was made of', () => {
    const place = { key: '2026-03-10T09:00:00.000Z', id };
    expect(placeOf(cursorOf(place))).toEqual(place);
    expect(instantPlaceOf(cursorOf(place)).key).toEqual(new Date(place.key));
  });

  it.each(['', 'rubbish', cursorOf({ key: 'a', id: "1'; drop table clip" }), 'e30'])(
    'refuses %j',
    (cursor) => {
      expect(() => placeOf(cursor)).toThrow(/cannot be continued/);
    },
  );

  it('refuses a key that is no instant where one is asked for', () => {
    expect(() => instantPlaceOf(cursorOf({ key: 'soon', id }))).toThrow();
  });
});

describe('a page', () => {
  it('goes on only where there is more', () => {
    const place = (n: number) => ({ key: String(n), id });
    expect(pageOf([1, 2, 3], 2, place)).toEqual({ items: [1, 2], next: cursorOf(place(2)) });
    expect(pageOf([1, 2], 2, place)).toEqual({ items: [1, 2], next: null });
    expect(pageOf([], 2, place)).toEqual({ items: [], next: null });
  });
});
