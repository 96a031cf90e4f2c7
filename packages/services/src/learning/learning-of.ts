import { Learning } from '@ballfirst/contracts/http/learning';
import type { Learned } from '@ballfirst/db/reads/learned';
import { blindOneIn } from '@ballfirst/diagnosis/blind-turn';
import { type ChosenCause, learnBaseRates } from '@ballfirst/diagnosis/learn-base-rates';
import { causes } from '@ballfirst/library/causes';
import { type FaultId, faults } from '@ballfirst/library/types';
import type { Reply } from '../operation-types.ts';
import { choicesOf } from './base-rates-of.ts';

const swingsOf = (choices: readonly ChosenCause[]): number =>
  choices.reduce((sum, { swings = 1 }) => sum + swings, 0);

/** What the academy has learned as it is shown: by miss and cause, with the rates of all misses together. */
export const learningOf = (learned: Learned): Reply<'readLearning'> => {
  const choices = choicesOf(learned);
  const rateOf = new Map(learnBaseRates(causes, choices).map(({ causeId, rate }) => [causeId, rate]));
  const shown = (fault: FaultId) => {
    const of = choices.filter((one) => one.fault === fault);
    const counts = new Map(learnBaseRates(causes, of).map((one) => [one.causeId, one]));
    const rows = causes.flatMap(({ id, name, baseRate }) => {
      const count = counts.get(id);
      if (count === undefined || count.seen === 0) return [];
      const { chosen, seen, expected } = count;
      const rate = rateOf.get(id) ?? baseRate;
      return [{ causeId: id, name, chosen, seen, expected, libraryRate: baseRate, rate }];
    });
    return {
      fault,
      swings: swingsOf(of),
      causes: rows.sort((a, b) => b.chosen - a.chosen || b.rate - a.rate),
    };
  };
  const blind = swingsOf(choices.filter((one) => one.blind));
  return Learning.parse({
    on: learned.since !== null,
    ...{ since: learned.since, resetAt: learned.resetAt, oneIn: blindOneIn, blind },
    overruled: swingsOf(choices) - blind,
    faults: faults
      .map(shown)
      .filter(({ swings }) => swings > 0)
      .sort((a, b) => b.swings - a.swings),
  });
};
