import { erlangB, erlangC } from '@ballfirst/numbers/erlang';
import { describe, expect, it } from 'vitest';

// Source: standard Erlang tables (loads in erlangs on so many servers), recomputed to six places; 4.461 on 10 is the
// table's entry for one in a hundred, from memory.
describe('Erlang', () => {
  it.each([
    [1, 1, 0.5],
    [3, 2, 0.210526],
    [5, 3, 0.110054],
    [5, 5, 0.284868],
    [10, 8, 0.121661],
    [10, 10, 0.214582],
    [14, 10, 0.056819],
  ])('B: %d servers, load %d', (servers, load, blocked) => {
    expect(erlangB(servers, load)).toBeCloseTo(blocked, 6);
  });
  it('B: the table entry for one in a hundred', () => {
    expect(erlangB(10, 4.461)).toBeCloseTo(0.01, 4);
  });

  it.each([
    [3, 2, 0.444444],
    [5, 3, 0.236152],
    [10, 8, 0.40918],
    [14, 10, 0.174132],
    [3, 20 / 9, 0.55348],
  ])('C: %d servers, load %d', (servers, load, waits) => {
    expect(erlangC(servers, load)).toBeCloseTo(waits, 5);
  });

  it('C: everybody waits when the load fills the servers; nonsense is refused', () => {
    expect(erlangC(3, 3)).toBe(1);
    expect(() => erlangB(0, 1)).toThrow(RangeError);
    expect(() => erlangC(2, Number.NaN)).toThrow(RangeError);
    expect(() => erlangB(1e9, 1)).toThrow(RangeError);
  });
});
