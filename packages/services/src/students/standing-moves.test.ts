import { Standing } from '@ballfirst/contracts/words';
import { describe, expect, it } from 'vitest';
import { mayMove } from './standing-moves.ts';

// Our own rules of the business; there is no outside source.
const table = {
  invited: ['trial', 'paid', 'left'],
  trial: ['lapsed', 'paid', 'left'],
  lapsed: ['trial', 'paid', 'left'],
  paid: ['lapsed', 'paused', 'left'],
  paused: ['paid', 'left'],
  left: ['trial', 'paid'],
} as const;

describe('the moves of a standing', () => {
  it.each(Standing.options)('from %s are these and no others', (from) => {
    expect(Standing.options.filter((to) => mayMove(from, to))).toEqual(table[from]);
  });

  it('never lead to where one is, nor back to invited', () => {
    for (const from of Standing.options) {
      expect(mayMove(from, from)).toBe(false);
      expect(mayMove(from, 'invited')).toBe(false);
    }
  });

  it('lead to paid from everywhere else', () => {
    expect(Standing.options.filter((from) => from !== 'paid' && !mayMove(from, 'paid'))).toEqual([]);
  });
});
