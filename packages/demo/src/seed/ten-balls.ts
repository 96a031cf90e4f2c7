import type { Tally } from '@ballfirst/contracts/words';
import type { Draw } from './draw.ts';

export type Miss = 'fat' | 'thin' | 'topped' | 'heel' | 'toe' | 'shank' | 'sky';
/** How often a golfer's ball is what, in the long run; the rest is solid. */
export type Shares = Readonly<Partial<Record<Miss, number>>>;

const none = { fat: 0, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 } as const;

/** A tally as it is told: ten balls, counted or from memory. */
export const tallyOf = (misses: Partial<Record<Miss, number>>, counted = true): Tally => {
  const all = { ...none, ...misses };
  const missed = Object.values(all).reduce((sum, it) => sum + it, 0);
  return { balls: 10, solid: 10 - missed, counted, ...all };
};

/** Ten balls of a golfer with these shares: each ball drawn by itself, so that ten of them are as noisy as they are. */
export const tenBalls = (draw: Draw, shares: Shares): Tally => {
  const misses: Partial<Record<Miss, number>> = {};
  for (let ball = 0; ball < 10; ball += 1) {
    let at = draw.next();
    for (const [miss, share] of Object.entries(shares) as [Miss, number][]) {
      at -= share;
      if (at >= 0) continue;
      misses[miss] = (misses[miss] ?? 0) + 1;
      break;
    }
  }
  return tallyOf(misses, draw.next() < 0.8);
};

/** Who asks for help has had a bad day: the first tally is one with at least so many of the miss. */
export const badDay = (draw: Draw, shares: Shares, miss: Miss, atLeast = 5): Tally => {
  for (let day = 0; day < 60; day += 1) {
    const tally = tenBalls(draw, shares);
    if (tally[miss] >= atLeast) return tally;
  }
  return tallyOf({ [miss]: atLeast });
};
