import { type Pinhole, type Spot3, seeSpot } from '../camera/see-spot.ts';
import { fatFirstPass } from './first-pass.ts';
import { type Hand, type Mark, type Picture, type Point, type Position, positions } from './marks.ts';
import type { Place } from './place.ts';

/** Lengths of a made-up swing in mm along the target line from the ball; the defaults lie inside common practice. */
export type PlantedSwing = Pinhole & {
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
const ankle = [90, 621] as const;
const hip = [950, 681] as const;
const head = [1540, 311] as const;
const gripEnd = [826, 421] as const;
const heel = [20, 681] as const;
const neck = [1330, 391] as const;
const hipImpact = 30;

const spotsOf = (swing: PlantedSwing): Readonly<Record<`${string}/${string}`, Spot3>> => {
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
    'finish/hip-middle': [swing.hipFinish, hip[0], 631],
    // Beyond the first pass: a plain body that hangs on the same hips and head.
    'address/lead-heel': [swing.leadAnkle - 15, ...heel],
    'address/trail-heel': [swing.trailAnkle + 5, ...heel],
    'address/clubhead': [-20, 25, 0],
    'address/neck-base': [swing.headAddress - 10, ...neck],
    'address/lead-thigh-inside': [swing.gripEndAddress - 5, 760, 571],
    'top/neck-base': [headTop - 15, ...neck],
    'lead-arm-parallel-down/neck-base': [headTop + swing.headFromTop - 10, ...neck],
    'lead-arm-parallel-down/lead-shoulder': [headTop + 140, 1290, 271],
    'lead-arm-parallel-down/lead-elbow': [headTop - 170, 1285, 421],
    'lead-arm-parallel-down/lead-wrist': [headTop - 430, 1280, 551],
    'lead-arm-parallel-down/grip-end': [headTop - 450, 1270, 551],
    'lead-arm-parallel-down/clubhead': [headTop - 500, 2090, 981],
    'impact/hip-middle': [hipImpact, 970, 681],
    'impact/head-centre': [swing.headAddress - 5, 1525, 311],
    'impact/neck-base': [swing.headAddress + 10, 1320, 391],
    'impact/grip-end': [90, 860, 421],
    'impact/clubhead': [-10, 30, 0],
    'impact/trail-heel': [swing.trailAnkle + 20, 70, 681],
    'shaft-parallel-through/lead-shoulder': [swing.headAddress + 190, 1290, 541],
    'shaft-parallel-through/lead-elbow': [swing.headAddress + 330, 1060, 531],
    'shaft-parallel-through/lead-wrist': [swing.headAddress + 460, 850, 521],
  };
};

/** A picture 1080 by 1920 pixels of nine frames, for planted marks. */
export const plantedPicture: Picture = {
  widthPx: 1080,
  heightPx: 1920,
  frameTimesS: Array.from({ length: 9 }, (_, frame) => frame / 60),
};

const marksOf = (changes: Partial<PlantedSwing>, wanted: (place: Place) => boolean): readonly Mark[] => {
  const swing = { ...soundSwing, ...changes };
  return Object.entries(spotsOf(swing)).flatMap(([name, spot]) => {
    const [position, point] = name.split('/') as [Position, Point];
    if (!wanted({ position, point })) return [];
    const { levelPx, upPx } = seeSpot(spot, swing);
    const mark: Mark = {
      position,
      point,
      frame: positions.indexOf(position),
      x: plantedPicture.widthPx / 2 + (swing.hand === 'right' ? levelPx : -levelPx),
      y: plantedPicture.heightPx / 2 - upPx,
      source: 'coach',
    };
    return [mark];
  });
};

/**
 * The twelve marks of a swing of known lengths, seen without error by a pinhole camera: what the measurements are
 * checked against.
 *
 * @source pinhole geometry; the body is an invention
 */
export const plantedMarks = (changes: Partial<PlantedSwing> = {}): readonly Mark[] =>
  marksOf(changes, ({ position, point }) =>
    fatFirstPass.some((place) => place.position === position && place.point === point),
  );

/** Every place that a face-on measurement reads, marked. */
export const plantedFully = (changes: Partial<PlantedSwing> = {}): readonly Mark[] =>
  marksOf(changes, () => true);
