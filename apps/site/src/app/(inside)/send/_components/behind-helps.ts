import type { BallsDraft } from './draft.ts';

const fromBehind = new Set(['heel', 'toe', 'shank']);
const offLine = new Set(['left', 'right']);

/**
 * Whether a second view from behind the player helps: strikes off heel, toe or neck, and balls that start or curve off
 * line are seen from there; fat, thin and topped ones are not (facts of the trade; common practice, no source).
 */
export const behindHelps = (draft: Pick<BallsDraft, 'taps' | 'startLine' | 'curve'>): boolean => {
  const sideways = draft.taps.filter((one) => fromBehind.has(one)).length;
  const misses = draft.taps.filter((one) => one !== 'solid').length;
  return offLine.has(draft.startLine) || offLine.has(draft.curve) || (sideways > 0 && sideways * 2 >= misses);
};
