import { explainAway, type PossibleCause } from '@ballfirst/diagnosis/explain-away';
import { gradedSignLogRatio } from '@ballfirst/numbers/graded-sign';
import { noisyOr } from '@ballfirst/numbers/noisy-or';
import { observedSignLogRatio } from '@ballfirst/numbers/observed-sign';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

describe('signs', () => {
  // Source: worked by hand and computed independently of this project; s 20, sensitivity .8, specificity .9.
  it.each([
    [41, 9, 55.0],
    [12, 9, 4.254],
    [5, 9, 2.293],
    [0, 9, 1.4746],
    [-30, 9, 0.1043],
    [41, 60, 1.619],
  ])('a reading %d mm past the edge with a doubt of %d mm', (past, u, ratio) => {
    const log = gradedSignLogRatio({ past, u, sd: 20, sensitivity: 0.8, specificity: 0.9 });
    expect(Math.exp(log) / ratio).toBeCloseTo(1, 2);
  });

  it('says nothing when the doubt is without bounds', () => {
    const sign = { past: 40, u: 1e6, sd: 20, sensitivity: 0.8, specificity: 0.9 };
    expect(gradedSignLogRatio(sign)).toBeCloseTo(0, 6);
  });

  // Source: Sackett et al., Clinical Epidemiology, ferritin and iron deficiency 731/809 and 270/1770 (from memory).
  it('has the likelihood ratios of a textbook test', () => {
    const sensitivity = 731 / 809;
    const specificity = 1 - 270 / 1770;
    expect(Math.exp(observedSignLogRatio(true, sensitivity, specificity))).toBeCloseTo(5.92, 2);
    expect(Math.exp(observedSignLogRatio(false, sensitivity, specificity))).toBeCloseTo(0.1138, 4);
  });

  // Source: Eddy; Gigerenzer & Hoffrage: prevalence 1 %, sensitivity 80 %, false alarms 9.6 % (from memory).
  it('has the posterior of the textbook screening', () => {
    const odds = (0.01 / 0.99) * Math.exp(observedSignLogRatio(true, 0.8, 1 - 0.096));
    expect(odds / (1 + odds)).toBeCloseTo(0.07764, 5);
  });
});

describe('causes', () => {
  // Source: derived by hand, 1 - .95 * .4 * .7.
  it('join in a noisy-OR', () => {
    expect(noisyOr(0.05, [0.6, 0.3])).toBeCloseTo(0.734, 12);
  });

  const three = (logRatios: readonly number[]): PossibleCause[] =>
    [
      { baseRate: 0.3, weight: 0.6 },
      { baseRate: 0.2, weight: 0.3 },
      { baseRate: 0.2, weight: 0.5 },
    ].map((cause, i) => ({ ...cause, logRatio: logRatios[i] ?? 0 }));

  // Source: full sums over the eight sets, computed independently of this project.
  it.each([
    [
      [0, 0, 0],
      [0.597, 0.2987, 0.37181],
    ],
    [
      [Math.log(8), 0, 0],
      [0.92219, 0.23858, 0.26716],
    ],
    [
      [0, Math.log(8), 0],
      [0.49627, 0.77311, 0.31354],
    ],
  ])('explain each other away, signs %j', (logRatios, posteriors) => {
    explainAway(three(logRatios), 0.05).forEach(({ probability }, i) => {
      expect(probability).toBeCloseTo(posteriors[i] ?? 0, 5);
    });
  });

  it('have the chance of the fault that the full sum has', () => {
    // Source: as above, P(fault) .340966: the share of the first is 1 - P(fault without it) / P(fault).
    const withoutFirst = noisyOr(0.05, [0.2 * 0.3, 0.2 * 0.5]);
    expect(explainAway(three([0, 0, 0]), 0.05)[0]?.share).toBeCloseTo(1 - withoutFirst / 0.340966, 5);
  });

  it('agree with the sum over every set of up to ten causes', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    const cause = fc.record({
      baseRate: share,
      weight: share,
      logRatio: fc.double({ min: -4, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(cause, { minLength: 1, maxLength: 10 }), share, (causes, leak) => {
        const full = bySum(causes, leak);
        explainAway(causes, leak).forEach(({ probability, share: lost }, i) => {
          expect(probability).toBeCloseTo(full[i]?.probability ?? 0, 9);
          expect(lost).toBeCloseTo(full[i]?.share ?? 0, 9);
        });
      }),
      { numRuns: 40, seed: 51 },
    );
  });
});

/** The definition itself: every set of present causes, weighed and summed. */
function bySum(causes: readonly PossibleCause[], leak: number) {
  const present = causes.map(() => 0);
  const without = causes.map(() => 0);
  let fault = 0;
  for (let set = 0; set < 2 ** causes.length; set += 1) {
    const has = (i: number) => ((set >> i) & 1) === 1;
    const weight = causes.reduce(
      (product, { baseRate, logRatio }, i) =>
        product * (has(i) ? baseRate * Math.exp(logRatio) : 1 - baseRate),
      1,
    );
    const chance = (left: number) =>
      noisyOr(
        leak,
        causes.filter((_, i) => has(i) && i !== left).map((one) => one.weight),
      );
    fault += weight * chance(-1);
    causes.forEach((_, j) => {
      if (has(j)) present[j] = (present[j] ?? 0) + weight * chance(-1);
      without[j] = (without[j] ?? 0) + weight * chance(j);
    });
  }
  return causes.map((_, j) => ({
    probability: (present[j] ?? 0) / fault,
    share: 1 - (without[j] ?? 0) / fault,
  }));
}
