import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Camera, phoneCamera } from './camera.ts';
import { type Look, lookOf } from './look.ts';
import type { GolferCause } from './swing-shape.ts';
import type { Truth } from './truth.ts';

/** What one kept clip is rendered from: everything that changes its bytes besides the code and the encoder. */
export type ClipPlan = {
  readonly id: string;
  readonly cause: GolferCause;
  readonly hand: 'right' | 'left';
  readonly fps: number;
  readonly camera: Camera;
  readonly look: Look;
};

const cap = { chalk: '#f1efe8', ink: '#2f3b45', moss: '#5c6f47', sand: '#c9a769' } as const;
const seenFrom = (change: Partial<Camera>): Camera => ({ ...phoneCamera, ...change });
const plan = (
  id: string,
  cause: GolferCause,
  look: Look,
  camera: Camera,
  hand: 'right' | 'left' = 'right',
): ClipPlan => ({ id, cause, hand, fps: 120, camera, look });

/** The clips kept in `clips/`, one golfer each: a sound swing, one for each cause, two left-handers. */
export const keptClips: readonly ClipPlan[] = [
  plan('sound', 'none', lookOf('teal', 'stone', 'tan', cap.chalk), seenFrom({})),
  plan(
    'handle-back',
    'handle-back',
    lookOf('brick', 'charcoal', 'light', cap.chalk),
    seenFrom({ distanceMm: 3920, heightMm: 960 }),
  ),
  plan(
    'hips-back-at-address',
    'hips-back-at-address',
    lookOf('ochre', 'navy', 'deep', cap.ink),
    seenFrom({ distanceMm: 4080, heightMm: 1030, asideMm: -45 }),
  ),
  plan(
    'sway-away',
    'sway-away',
    lookOf('plum', 'stone', 'light', cap.sand),
    seenFrom({ asideMm: -20, yawDeg: 0.6 }),
  ),
  plan(
    'hang-back',
    'hang-back',
    lookOf('sky', 'charcoal', 'tan', cap.chalk),
    seenFrom({ distanceMm: 3960, heightMm: 1010, asideMm: -15 }),
  ),
  plan(
    'thrown-early',
    'thrown-early',
    lookOf('moss', 'stone', 'light', cap.ink),
    seenFrom({ distanceMm: 4050, heightMm: 980, yawDeg: -0.5 }),
  ),
  plan('left-hander-sway-away', 'sway-away', lookOf('chalk', 'navy', 'deep', cap.moss), seenFrom({}), 'left'),
  plan(
    'left-hander-hang-back',
    'hang-back',
    lookOf('brick', 'navy', 'tan', cap.sand),
    seenFrom({ distanceMm: 4060, heightMm: 1020 }),
    'left',
  ),
];

const folder = new URL('../../clips/', import.meta.url);

/** Where a kept clip lies on disk. */
export const clipPath = (id: string): string => fileURLToPath(new URL(`${id}.mp4`, folder));

/** The truth of a kept clip. */
export const clipTruth = (id: string): Truth =>
  JSON.parse(readFileSync(new URL(`truth/${id}.json`, folder), 'utf8')) as Truth;
