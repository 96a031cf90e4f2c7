import { fileURLToPath } from 'node:url';
import { lookOf } from './look.ts';
import type { GripPlan } from './paint-grip.ts';

/** The drawn photos of a grip kept in `clips/grip/`: how the hands lie as most teach it, and turned towards the target. */
export const keptGrips: readonly GripPlan[] = [
  { id: 'square', hand: 'right', turnDeg: 4, look: lookOf('plum', 'stone', 'light', '#c9a769') },
  {
    id: 'turned-to-target',
    hand: 'right',
    turnDeg: -32,
    look: lookOf('ochre', 'charcoal', 'tan', '#5c6f47'),
  },
];

/** Where a kept photo of a grip lies on disk. */
export const gripPath = (id: string): string =>
  fileURLToPath(new URL(`../../clips/grip/${id}.jpg`, import.meta.url));
