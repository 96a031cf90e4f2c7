import { describe, expect, it } from 'vitest';
import { leadFault } from './lead-fault.ts';

describe('lead fault', () => {
  it('is the costliest miss, with how sure that is', () => {
    const lead = leadFault({ solid: 3, fat: 6, thin: 1 }, 1);
    expect(lead?.fault).toBe('fat');
    expect(lead?.probability).toBeGreaterThan(0.8);
  });

  it('is less sure of an even tally', () => {
    const even = leadFault({ solid: 4, fat: 3, thin: 3 }, 1)?.probability ?? 1;
    expect(even).toBeLessThan(leadFault({ solid: 4, fat: 6 }, 1)?.probability ?? 0);
  });

  it('gives the same answer for the same seed', () => {
    expect(leadFault({ fat: 3, thin: 4 }, 9)).toEqual(leadFault({ fat: 3, thin: 4 }, 9));
  });

  it('names no miss that was not seen, and none for ten solid balls', () => {
    expect(leadFault({ solid: 9, heel: 1 }, 3)?.fault).toBe('heel');
    expect(leadFault({ solid: 10 }, 3)).toBeNull();
    expect(leadFault({}, 3)).toBeNull();
  });

  it('refuses counts that are no balls', () => {
    expect(() => leadFault({ fat: -1 }, 1)).toThrow(RangeError);
    expect(() => leadFault({ fat: 2.5 }, 1)).toThrow(RangeError);
  });
});
