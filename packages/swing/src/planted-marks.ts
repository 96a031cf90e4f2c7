import { fatFirstPass } from './first-pass.ts';
import { type Hand, type Mark, type Picture, positions } from './marks.ts';

/** Lengths of a made-up swing in mm along the target line from the ball; the defaults lie inside common practice. */
export type PlantedSwing = {
  readonly hand: Hand;
  readonly leadAnkle: number;
  readonly trailAnkle: number;
  readonly hipAddress: number;
  readonly headAddress: number;
  readonly gripEndAddress: number;
  readonly hipToTop: number;
  readonly headToTop: number;
  readonly hipFromTop: number;
  readonly headFromTop: number;
  readonly gripEndShaftParallelDown: number;
  readonly hipFinish: number;
  /** Where the camera stands: mm from the ball, height of the lens, yaw and roll in degrees, focal length in pixels. */
  readonly distanceMm: number;
  readonly lensHeightMm: number;
  readonly yawDeg: number;
  readonly rollDeg: number;
  readonly focalPx: number;
};

export const soundSwing: PlantedSwing = {
  hand: 'right',
  leadAnkle: 120,
  trailAnkle: -310,
  hipAddress: -70,
  headAddress: -60,
  gripEndAddress: 45,
  hipToTop: -10,
  headToTop: -12,
  hipFromTop: 55,
  headFromTop: 15,
  gripEndShaftParallelDown: -40,
  hipFinish: 130,
  distanceMm: 3900,
  lensHeightMm: 1000,
  yawDeg: 0,
  rollDeg: 0,
  focalPx: 1400,
};

/** Heights above the ground and depths behind the ball of an 8-iron swing, mm. */
const ball = [21.335, 0] as const;
const ankle = [90, 631] as const;
const hip = [950, 711] as const;
const head = [1540, 391] as const;
const gripEnd = [826, 421] as const;

const spotsOf = (swing: PlantedSwing): Readonly<Record<string, readonly [number, number, number]>> => {
  const hipTop = swing.hipAddress + swing.hipToTop;
  const headTop = swing.headAddress + swing.headToTop;
  return {
    'address/ball': [0, ...ball],
    'address/lead-ankle': [swing.leadAnkle, ...ankle],
    'address/trail-ankle': [swing.trailAnkle, ...ankle],
    'address/hip-middle': [swing.hipAddress, ...hip],
    'address/head-centre': [swing.headAddress, ...head],
    'address/grip-end': [swing.gripEndAddress, ...gripEnd],
    'top/hip-middle': [hipTop, ...hip],
    'top/head-centre': [headTop, ...head],
    'lead-arm-parallel-down/hip-middle': [hipTop + swing.hipFromTop, ...hip],
    'lead-arm-parallel-down/head-centre': [headTop + swing.headFromTop, ...head],
    'shaft-parallel-down/grip-end': [swing.gripEndShaftParallelDown, ...gripEnd],
    'finish/hip-middle': [swing.hipFinish, ...hip],
  };
};

/** A picture 1080 by 1920 pixels of nine frames, for planted marks. */
export const plantedPicture: Picture = {
  widthPx: 1080,
  heightPx: 1920,
  frameTimesS: Array.from({ length: 9 }, (_, frame) => frame / 60),
};

/**
 * The twelve marks of a swing of known lengths, seen without error by a pinhole camera: what the measurements are
 * checked against.
 *
 * @source pinhole geometry; the body is an invention
 */
export function plantedMarks(changes: Partial<PlantedSwing> = {}): readonly Mark[] {
  const swing = { ...soundSwing, ...changes };
  const spots = spotsOf(swing);
  const yaw = (swing.yawDeg * Math.PI) / 180;
  const roll = (swing.rollDeg * Math.PI) / 180;
  return fatFirstPass.map(({ position, point }) => {
    const [along, up, depth] = spots[`${position}/${point}`] ?? [0, 0, 0];
    // The camera stands on a circle round the ball; turning it carries deeper points towards the trail side.
    const right = along * Math.cos(yaw) - depth * Math.sin(yaw);
    const away = swing.distanceMm + depth * Math.cos(yaw) + along * Math.sin(yaw);
    const level = (swing.focalPx * right) / away;
    const height = (swing.focalPx * (up - swing.lensHeightMm)) / away;
    const px = level * Math.cos(roll) - height * Math.sin(roll);
    const py = height * Math.cos(roll) + level * Math.sin(roll);
    return {
      position,
      point,
      frame: positions.indexOf(position),
      x: plantedPicture.widthPx / 2 + (swing.hand === 'right' ? px : -px),
      y: plantedPicture.heightPx / 2 - py,
      source: 'coach' as const,
    };
  });
}
