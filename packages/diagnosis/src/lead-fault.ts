import { type Outcome, outcomes } from '@ballfirst/library/types';
import { drawDirichlet } from '@ballfirst/numbers/draw-dirichlet';
import { seededRandom } from '@ballfirst/numbers/seeded-random';

export type Miss = Exclude<Outcome, 'solid'>;

/** What one ball of each kind costs, in strokes. Common practice, no source; an academy may edit them. */
export const usualCosts: Readonly<Record<Miss, number>> = {
  fat: 1,
  thin: 0.6,
  topped: 1,
  heel: 0.4,
  toe: 0.4,
  shank: 1.5,
  sky: 0.6,
};

export type LeadFault = {
  readonly fault: Miss;
  /** How sure we are that it is the costliest, 0..1. */
  readonly probability: number;
};

const draws = 1000;
const misses = outcomes.filter((outcome): outcome is Miss => outcome !== 'solid');

/**
 * The costliest miss of a strike tally: shares drawn from one Dirichlet with a half added to each outcome.
 *
 * @param tally - counts by outcome; an absent one is 0
 * @param seed - the same seed gives the same answer
 * @returns null when no ball was missed
 * @throws RangeError when a count is not a whole number from 0 up
 * @source Jeffreys' prior for a multinomial; the costs are common practice, no source
 * @example leadFault({ solid: 3, fat: 5, thin: 2 }, 1) // { fault: 'fat', probability: close to 1 }
 */
export function leadFault(
  tally: Readonly<Partial<Record<Outcome, number>>>,
  seed: number,
  costs: Readonly<Record<Miss, number>> = usualCosts,
): LeadFault | null {
  const counts = outcomes.map((outcome) => tally[outcome] ?? 0);
  if (counts.some((count) => !Number.isInteger(count) || count < 0)) {
    throw new RangeError('A tally counts whole balls from 0 up.');
  }
  if (misses.every((miss) => (tally[miss] ?? 0) === 0)) return null;
  const random = seededRandom(seed);
  const wins = new Map<Miss, number>();
  const weights = counts.map((count) => count + 0.5);
  for (let draw = 0; draw < draws; draw += 1) {
    const shares = drawDirichlet(random, weights);
    const dear = misses.map((miss) => costs[miss] * (shares[outcomes.indexOf(miss)] ?? 0));
    const first = misses[dear.indexOf(Math.max(...dear))] ?? 'fat';
    wins.set(first, (wins.get(first) ?? 0) + 1);
  }
  // Only a miss that was seen may lead: the half added to the others is doubt, not evidence.
  const seen = misses.filter((miss) => (tally[miss] ?? 0) > 0);
  const lead = seen.reduce((best, miss) => ((wins.get(miss) ?? 0) > (wins.get(best) ?? 0) ? miss : best));
  return { fault: lead, probability: (wins.get(lead) ?? 0) / draws };
}
