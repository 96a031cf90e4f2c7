import type { SprtPlan } from './sprt-plan.ts';
import { sprtVerdict } from './sprt-verdict.ts';

export type SprtLooks = {
  /** Trials between two looks: 1 looks after every ball. */
  readonly every: number;
  /** Trials after which the test ends undecided. */
  readonly stopAt: number;
};

export type SprtCharacteristic = {
  readonly pass: number;
  readonly fail: number;
  readonly undecided: number;
  readonly expectedTrials: number;
};

/**
 * What a sequential test does to somebody whose true share is p: exact, by carrying the chance of every count along.
 *
 * @param p - true share, 0..1
 * @param looks - whole numbers, 1 <= every <= stopAt <= 5,000
 * @throws RangeError on a share or looks out of range
 * @source Wald 1947, chapter 3 gives approximations; this counts the binomial steps instead
 * @example sprtCharacteristic(plan, 0.8, { every: 10, stopAt: 30 }).pass // 0.892 for p0 .5, p1 .8, risks .1
 */
export function sprtCharacteristic(
  plan: SprtPlan,
  p: number,
  { every, stopAt }: SprtLooks,
): SprtCharacteristic {
  if (!(p >= 0 && p <= 1)) throw new RangeError('A share lies between 0 and 1.');
  const whole = Number.isInteger(every) && Number.isInteger(stopAt);
  if (!whole || every < 1 || stopAt < every || stopAt > 5000) {
    throw new RangeError('Looks are whole numbers with 1 <= every <= stopAt <= 5,000.');
  }
  let chances = [1];
  let [pass, fail, expectedTrials] = [0, 0, 0];
  for (let n = 1; n <= stopAt; n += 1) {
    expectedTrials += chances.reduce((sum, chance) => sum + chance, 0);
    const next = new Array<number>(n + 1).fill(0);
    chances.forEach((chance, successes) => {
      next[successes] = (next[successes] ?? 0) + chance * (1 - p);
      next[successes + 1] = (next[successes + 1] ?? 0) + chance * p;
    });
    chances =
      n % every === 0
        ? next.map((chance, successes) => {
            const verdict = chance === 0 ? 'undecided' : sprtVerdict(plan, successes, n);
            if (verdict === 'undecided') return chance;
            if (verdict === 'pass') pass += chance;
            else fail += chance;
            return 0;
          })
        : next;
  }
  return { pass, fail, undecided: chances.reduce((sum, chance) => sum + chance, 0), expectedTrials };
}
