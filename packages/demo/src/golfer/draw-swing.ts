import { seededRandom } from '@ballfirst/numbers/seeded-random';
import type { View } from './camera.ts';
import { type CameraChanges, drawCamera, type PictureSize } from './draw-camera.ts';
import { drawShape } from './draw-shape.ts';
import { causeKnobs, type GolferCause } from './golfer-causes.ts';
import { type Hand, type Swing, swingOf } from './swing.ts';
import { type Truth, truthOf } from './truth.ts';

export type SwingWishes = {
  /** Planted causes; none by default, two are allowed. */
  readonly causes?: readonly GolferCause[];
  readonly hand?: Hand;
};

/**
 * One golfer by chance: the same seed and wishes give the same swing everywhere. Nothing is drawn; a thousand take
 * about as many milliseconds.
 *
 * @throws RangeError when one body cannot do two of the causes
 * @example drawSwing(7, { causes: ['sway-away'] })
 */
export function drawSwing(seed: number, { causes = [], hand = 'right' }: SwingWishes = {}): Swing {
  const random = seededRandom(seed);
  // The recording starts at any instant: moments lie anywhere between two frames.
  const startS = 0.28 + 0.04 * random();
  for (let tries = 0; tries < 20; tries += 1) {
    const shape = drawShape(random, causes);
    const swing = possibleSwing(() => swingOf(shape, hand, causes, startS));
    if (swing !== null) return swing;
  }
  throw new RangeError(`No body of seed ${seed} can swing so.`);
}

/** A draw whose arms cannot bring the club to the ball is no golfer: the next one is taken. */
function possibleSwing(make: () => Swing): Swing | null {
  try {
    return make();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

export type ShotWishes = SwingWishes & {
  readonly view: View;
  readonly fps?: number;
  readonly size?: PictureSize;
  readonly camera?: CameraChanges;
};

/** A swing, the camera that saw it, and what is true of both. */
export type Shot = {
  readonly swing: Swing;
  readonly camera: ReturnType<typeof drawCamera>;
  readonly truth: Truth;
};

/**
 * A filmed swing by chance, without a picture: golfer, camera and truth.
 *
 * @example drawShot(7, { view: 'face-on', causes: ['hang-back'], camera: { yawDeg: 0 } }).truth.measures
 */
export function drawShot(seed: number, wishes: ShotWishes): Shot {
  const swing = drawSwing(seed, wishes);
  // The camera has its own numbers, so that a change of the golfer does not move it.
  const camera = drawCamera(seededRandom(seed ^ 0x5eed), wishes.view, wishes.size, wishes.camera);
  return { swing, camera, truth: truthOf(swing, camera, wishes.fps ?? 240, `seed-${seed}.mp4`) };
}

/** The view in which a cause shows. */
export const viewOfCause = (cause: GolferCause): View =>
  cause === 'none' ? 'face-on' : causeKnobs[cause].view;
/** The miss that a cause brings most often; a sound swing strikes it solid. */
export const faultOfCause = (cause: GolferCause): string =>
  cause === 'none' ? 'solid' : causeKnobs[cause].fault;
