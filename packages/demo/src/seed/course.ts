import type { Draw } from './draw.ts';
import type { Miss, Shares } from './ten-balls.ts';

/** How a golfer's misses go on after the first reply. */
export type Course = 'better' | 'plateau' | 'worse' | 'over-correcting';

/** The miss that takes over when a drill goes too far. */
const opposite: Readonly<Record<Miss, Miss>> = {
  fat: 'thin',
  thin: 'fat',
  topped: 'fat',
  heel: 'toe',
  toe: 'heel',
  shank: 'toe',
  sky: 'thin',
};
/** What a drill that works takes off the share of the miss from one swing to the next: an invention of the demo. */
const step = 0.17;
const within = (share: number): number => Math.min(0.75, Math.max(0.04, share));

/**
 * The true shares of a golfer at the swings sent, the first one before any reply. Golfers differ (a mean of .38, an SD of
 * about .12); what ten balls show of it is drawn elsewhere, and falls back towards this share by itself.
 */
export const sharesOver = (draw: Draw, of: { miss: Miss; course: Course; swings: number }): Shares[] => {
  const { miss, course } = of;
  const first = draw.beta(5.8, 9.5) + 0.06;
  const other = draw.beta(3, 20);
  return Array.from({ length: of.swings }, (_, swing) => {
    const worked = swing * step;
    if (course === 'better') return { [miss]: within(first - worked), [opposite[miss]]: within(other) };
    if (course === 'worse') {
      // A good day after the first reply, and then the old miss comes back with a vengeance.
      return { [miss]: swing === 0 ? within(first) : swing % 2 === 1 ? 0.06 : 0.95 };
    }
    if (course === 'over-correcting') {
      return {
        [miss]: within(first - swing * 0.3),
        [opposite[miss]]: within(other / 3 + swing * 0.32),
      };
    }
    return { [miss]: within(first), [opposite[miss]]: within(other) };
  });
};
