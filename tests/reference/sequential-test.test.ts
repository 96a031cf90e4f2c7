import { sprtCharacteristic } from '@ballfirst/numbers/sprt-characteristic';
import { sprtCounts } from '@ballfirst/numbers/sprt-counts';
import { sprtPlan } from '@ballfirst/numbers/sprt-plan';
import { sprtVerdict } from '@ballfirst/numbers/sprt-verdict';
import { describe, expect, it } from 'vitest';

const gate = sprtPlan({ p0: 0.5, p1: 0.8, alpha: 0.1, beta: 0.1 });

// Source: NIST/SEMATECH e-Handbook, sequential sampling plan for p0 .01, p1 .10 (from memory, reproduced).
describe('Wald’s lines', () => {
  it('agree with the handbook plan', () => {
    // There a lot is rejected at or above the upper line: our `pass` is its rejection.
    const plan = sprtPlan({ p0: 0.01, p1: 0.1, alpha: 0.05, beta: 0.1 });
    expect(plan.slope).toBeCloseTo(0.0397474, 7);
    expect(plan.failIntercept).toBeCloseTo(0.93886, 5);
    expect(plan.passIntercept).toBeCloseTo(1.20538, 5);
    expect(sprtCounts(plan, 24)).toEqual({ passAtLeast: 3, failAtMost: 0 });
  });

  it('agree with Wald’s own example, p0 .1, p1 .3', () => {
    const plan = sprtPlan({ p0: 0.1, p1: 0.3, alpha: 0.02, beta: 0.03 });
    expect(plan.failIntercept).toBeCloseTo(2.58263, 5);
    expect(plan.passIntercept).toBeCloseTo(2.87539, 5);
    expect(plan.slope).toBeCloseTo(0.186169, 6);
  });

  // Derived by hand from the two lines of the drill gate.
  it('give the counts of the drill gate', () => {
    expect(gate.slope).toBeCloseTo(0.660964, 6);
    expect(gate.passIntercept).toBeCloseTo(1.58496, 5);
    expect(sprtCounts(gate, 3).passAtLeast).toBeNull();
    const passes = [
      [5, 5],
      [6, 6],
      [7, 7],
      [8, 7],
      [9, 8],
      [10, 9],
      [12, 10],
      [15, 12],
    ] as const;
    for (const [balls, atLeast] of passes) expect(sprtCounts(gate, balls).passAtLeast).toBe(atLeast);
    const fails = [
      [3, 0],
      [4, 1],
      [6, 2],
      [7, 3],
      [9, 4],
      [10, 5],
      [12, 6],
    ] as const;
    for (const [balls, atMost] of fails) expect(sprtCounts(gate, balls).failAtMost).toBe(atMost);
  });

  it('refuse a question that cannot be asked', () => {
    expect(() => sprtPlan({ p0: 0.8, p1: 0.5, alpha: 0.1, beta: 0.1 })).toThrow(RangeError);
    expect(() => sprtPlan({ p0: 0.5, p1: 0.8, alpha: 0.6, beta: 0.5 })).toThrow(RangeError);
    expect(() => sprtVerdict(gate, 5, 4)).toThrow(RangeError);
    expect(() => sprtCounts(gate, -1)).toThrow(RangeError);
  });
});

/** Exact chances of the gate for a true share p, looked at after every `every` balls, stopped at `stopAt`. */
const operating = (p: number, every: number, stopAt: number) =>
  sprtCharacteristic(gate, p, { every, stopAt });

// Source: exact sums computed independently of this project (no published table); tolerance is the last place given.
describe('what the drill gate does, exactly', () => {
  it('ball by ball, without an end', () => {
    const low = operating(0.5, 1, 600);
    const high = operating(0.8, 1, 600);
    expect(low.pass).toBeCloseTo(0.0844, 4);
    expect(high.pass).toBeCloseTo(0.9226, 4);
    expect(low.expectedTrials).toBeCloseTo(9.36, 2);
    expect(operating(0.661, 1, 600).expectedTrials).toBeCloseTo(14.12, 2);
    expect(high.expectedTrials).toBeCloseTo(10.47, 2);
  });

  it.each([
    [0.5, 0.083, 0.02],
    [0.661, 0.46, 0.092],
    [0.8, 0.9, 0.024],
  ])('stopped at 30 balls, p %d', (p, pass, undecided) => {
    const result = operating(p, 1, 30);
    expect(result.pass).toBeCloseTo(pass, 3);
    expect(result.undecided).toBeCloseTo(undecided, 3);
  });

  it.each([
    [0.5, 0.029, 0.053],
    [0.661, 0.356, 0.25],
    [0.8, 0.892, 0.067],
  ])('in entries of ten, stopped at 30, p %d', (p, pass, undecided) => {
    const result = operating(p, 10, 30);
    expect(result.pass).toBeCloseTo(pass, 3);
    expect(result.undecided).toBeCloseTo(undecided, 3);
  });
});
