import type { Length } from './film-step.tsx';

/** How long the swing is at each step of a drill; brushing the ground is done hip-high, the course takes full swings. */
const lengths: Readonly<Record<string, Length>> = {
  rehearsal: 'rehearsal',
  brush: 'hip-high',
  'hip-high': 'hip-high',
  'three-quarter': 'three-quarter',
  full: 'full',
  transfer: 'full',
};

/** The swing length to begin the form with; null without a drill. */
export const rungLengthOf = (rung: string | null): Length | null =>
  rung === null ? null : (lengths[rung] ?? null);
