import type { RungId } from '@ballfirst/library/types';

/** How one session on a rung is laid out. Figures: common practice, but for what is cited. */
export type SessionPlan = {
  /** Swings block by block, with a rest between them. */
  readonly blocks: readonly number[];
  readonly restSeconds: number;
  /** One swing of so many is filmed and looked at. */
  readonly filmOneOf: number;
  /** From three-quarter on clubs and targets change from swing to swing. */
  readonly mixed: boolean;
  /** The next day is a day of rest. */
  readonly heavy: boolean;
};

const blockAtMost = 10;
const blockAtLeast = 5;
const fullSpeedAtMost = 40;
const sessionAtMost = 90;
const fast: ReadonlySet<RungId> = new Set(['three-quarter', 'full', 'transfer']);
const atFullSpeed: ReadonlySet<RungId> = new Set(['full', 'transfer']);

/**
 * A session on one rung: blocks of five to ten, film one of three, no more than 90 swings and 40 at full speed.
 *
 * @param balls - wanted, from the drill, the place and the student
 * @throws RangeError when there are none
 * @source mixed practice is kept better (Barzyk & Gruber 2024, review); feedback on part of the swings (Winstein & Schmidt
 * 1990, from memory); the other figures are common practice, no source
 */
export const sessionPlan = (rung: RungId, balls: number): SessionPlan => {
  if (!Number.isInteger(balls) || balls < 1) throw new RangeError('A session has at least one swing.');
  const total = Math.min(balls, sessionAtMost, atFullSpeed.has(rung) ? fullSpeedAtMost : sessionAtMost);
  const blocks: number[] = [];
  for (let left = total; left > 0; ) {
    const rest = left % blockAtMost;
    const size =
      left > blockAtMost && rest > 0 && rest < blockAtLeast
        ? blockAtMost - blockAtLeast + rest
        : Math.min(left, blockAtMost);
    blocks.push(size);
    left -= size;
  }
  return {
    blocks,
    restSeconds: 60,
    filmOneOf: 3,
    mixed: fast.has(rung),
    heavy: atFullSpeed.has(rung),
  };
};
