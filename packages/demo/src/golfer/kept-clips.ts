import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { headMarks } from './arc-marks.ts';
import { type Camera, phoneCamera } from './camera.ts';
import type { GolferCause } from './golfer-causes.ts';
import { type Look, lookOf } from './look.ts';
import { heardAtS, paintSound } from './paint-sound.ts';
import { type Hand, makeSwing, type Swing } from './swing.ts';
import type { SwingShape } from './traits.ts';
import type { Truth } from './truth.ts';

/** What one kept clip is rendered from: everything that changes its bytes besides the code and the encoder. */
export type ClipPlan = {
  readonly id: string;
  readonly cause: GolferCause;
  readonly hand: Hand;
  readonly fps: number;
  readonly camera: Camera;
  readonly look: Look;
  /** What makes this golfer another body than the typical one. */
  readonly changes: Partial<SwingShape>;
};

const cap = { chalk: '#f1efe8', ink: '#2f3b45', moss: '#5c6f47', sand: '#c9a769' } as const;
/** A phone of today: its shutter rolls for 9 ms, its lens bends a little, nobody holds it quite level. */
const phone: Camera = { ...phoneCamera, readoutS: 0.009, k1: -0.006, rollDeg: 0.3 };
const seenFrom = (change: Partial<Camera>): Camera => ({ ...phone, ...change });
const behind = (change: Partial<Camera>): Camera => ({
  ...phone,
  view: 'down-the-line',
  distanceMm: 3400,
  asideMm: -230,
  ...change,
});
/** While a ball is struck the stick lies clear of the toe of the club. */
const stickAside = { stickBeyondBallMm: 110, stickLengthMm: 1200 };
type Rest = Partial<Pick<ClipPlan, 'hand' | 'fps' | 'changes'>>;
const plan = (id: string, cause: GolferCause, look: Look, camera: Camera, rest: Rest = {}): ClipPlan => ({
  id,
  cause,
  hand: 'right',
  fps: 120,
  ...rest,
  changes: { ...stickAside, ...rest.changes },
  camera,
  look,
});

/** The clips kept in `clips/`, one golfer each: a sound swing, causes in both views, two left-handers. */
export const keptClips: readonly ClipPlan[] = [
  plan('sound', 'none', lookOf('teal', 'stone', 'tan', cap.chalk), seenFrom({})),
  plan(
    'handle-back',
    'handle-back',
    lookOf('brick', 'charcoal', 'light', cap.chalk),
    seenFrom({ distanceMm: 3010, heightMm: 960 }),
    { changes: { bodySize: 1.02 } },
  ),
  plan(
    'hips-back-at-address',
    'hips-back-at-address',
    lookOf('ochre', 'navy', 'deep', cap.ink),
    seenFrom({ distanceMm: 3120, heightMm: 1030, asideMm: -75 }),
  ),
  plan(
    'sway-away',
    'sway-away',
    lookOf('plum', 'stone', 'light', cap.sand),
    seenFrom({ asideMm: -50, yawDeg: 0.6 }),
    { changes: { bodySize: 0.97 } },
  ),
  plan(
    'hang-back',
    'hang-back',
    lookOf('sky', 'charcoal', 'tan', cap.chalk),
    seenFrom({ distanceMm: 3030, heightMm: 1010, asideMm: -45 }),
  ),
  plan(
    'thrown-early',
    'thrown-early',
    lookOf('moss', 'stone', 'light', cap.ink),
    seenFrom({ distanceMm: 3100, heightMm: 980, yawDeg: -0.5 }),
  ),
  plan('left-hander-sway-away', 'sway-away', lookOf('chalk', 'navy', 'deep', cap.moss), seenFrom({}), {
    hand: 'left',
  }),
  plan(
    'left-hander-hang-back',
    'hang-back',
    lookOf('brick', 'navy', 'tan', cap.sand),
    seenFrom({ distanceMm: 3110, heightMm: 1020 }),
    { hand: 'left', changes: { bodySize: 1.01 } },
  ),
  plan('lift', 'lift', lookOf('plum', 'charcoal', 'deep', cap.chalk), seenFrom({ heightMm: 990 }), {
    fps: 240,
  }),
  plan('hips-toward-ball', 'hips-toward-ball', lookOf('sky', 'stone', 'light', cap.ink), behind({}), {
    fps: 240,
  }),
  plan(
    'out-to-in',
    'out-to-in',
    lookOf('ochre', 'charcoal', 'tan', cap.moss),
    behind({ distanceMm: 3500, heightMm: 1040, yawDeg: 0.5 }),
  ),
];

/** The swing of a kept clip. */
export const swingOfClip = (clip: ClipPlan): Swing => makeSwing(clip.cause, clip.hand, clip.changes);

const folder = new URL('../../clips/', import.meta.url);

/** Where a kept clip lies on disk. */
export const clipPath = (id: string): string => fileURLToPath(new URL(`${id}.mp4`, folder));

/** The truth of a kept clip. */
export const clipTruth = (id: string): Truth =>
  JSON.parse(readFileSync(new URL(`truth/${id}.json`, folder), 'utf8')) as Truth;

/** The clubhead on the frames near the ball, where it was: [frame, x, y]; none but face-on. */
export type KeptTrail = readonly (readonly [frame: number, x: number, y: number])[];

const hundredth = (value: number) => Math.round(value * 100) / 100;

/** The clubhead of a kept clip near the ball, without the errors of anybody's clicks. */
export const trailOfClip = (clip: ClipPlan): KeptTrail => {
  if (clip.camera.view !== 'face-on') return [];
  const shot = { swing: swingOfClip(clip), camera: clip.camera, truth: clipTruth(clip.id) };
  return headMarks(shot, 0, 700, 0).map(({ frame, x, y }) => [frame, hundredth(x), hundredth(y)]);
};

/** The sound of a kept clip: one strike, heard where its camera stands; its place in the list is its seed. */
export const soundOfClip = (clip: ClipPlan): Int16Array => {
  const { durationS, timing } = swingOfClip(clip);
  const heardS = heardAtS(timing.impact, clip.camera.distanceMm);
  return paintSound(durationS, heardS, 1 + keptClips.findIndex(({ id }) => id === clip.id));
};
