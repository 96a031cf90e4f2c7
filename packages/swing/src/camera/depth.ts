import { byPlace } from '../marks/by-place.ts';
import type { View } from '../marks/marks.ts';
import type { Place } from '../marks/place.ts';

/** From where a depth counts: the ball, the grip end at address, or one club length nearer to the lens than the ball. */
export type DepthBase = 'ball' | 'grip-end' | 'club-nearer';

export type Depth = {
  /** The sources of its error, and of what that does where the camera is turned: places with the same names share them. */
  readonly source: string;
  readonly sourceByYaw: string;
  readonly from: DepthBase;
  readonly mm: number;
  readonly u: number;
};

const namesOf = (name: string) => ({ source: `${name}/depth`, sourceByYaw: `${name}/depth-by-yaw` });

type Row = readonly [mm: number, u: number];
type Rows = Readonly<Partial<Record<string, Row>>>;

/**
 * Face-on, behind the grip end at address, away from the camera: by moment where the point travels. On the way down the
 * shaft stands up a plane of 62 degrees and so leans away from the lens. Common practice, no source.
 */
const behindGripEnd: Rows = {
  'grip-end': [0, 40],
  hands: [5, 40],
  'lead-wrist': [10, 40],
  'lead-elbow': [20, 60],
  'lead-thigh-inside': [150, 40],
  'thigh-front': [150, 60],
  'lead-ankle': [200, 40],
  'trail-ankle': [200, 40],
  'lead-heel': [260, 50],
  'trail-heel': [260, 50],
  'hip-middle': [260, 50],
  'finish/hip-middle': [210, 60],
  'neck-base': [-30, 60],
  'head-centre': [-110, 60],
  'lead-shoulder': [-10, 80],
  'lead-arm-parallel-down/lead-shoulder': [-150, 60],
  'lead-arm-parallel-down/lead-elbow': [0, 60],
  'lead-arm-parallel-down/lead-wrist': [130, 60],
  'lead-arm-parallel-down/grip-end': [130, 60],
  'lead-arm-parallel-down/shaft-mid': [350, 90],
  'lead-arm-parallel-down/clubhead': [560, 110],
  'shaft-parallel-through/lead-shoulder': [120, 60],
  'shaft-parallel-through/lead-elbow': [110, 60],
  'shaft-parallel-through/lead-wrist': [100, 60],
};

/**
 * Down-the-line, beyond the ball, towards the target: by moment where the point travels, else for every moment. At
 * address the trail toe and the front of the trail thigh are what the lens sees. Common practice, no source.
 */
const beyondBall: Rows = {
  ball: [0, 0],
  'target-stick': [-600, 100],
  'target-stick-ahead': [600, 100],
  'address/clubhead': [-30, 20],
  'address/grip-end': [30, 25],
  'address/hands': [20, 25],
  'toe-line': [-345, 35],
  'thigh-front': [-180, 35],
  'address/seat-line': [-70, 80],
  'impact/seat-line': [30, 100],
  'hip-middle': [-60, 70],
  'impact/hip-middle': [20, 80],
  'neck-base': [-50, 70],
  'head-centre': [-60, 70],
  'shaft-parallel-back/hands': [-310, 60],
  'shaft-parallel-back/grip-end': [-220, 60],
  'lead-arm-parallel-down/hands': [-440, 80],
  'lead-arm-parallel-down/grip-end': [-450, 80],
  'lead-arm-parallel-down/clubhead': [-400, 160],
  'shaft-parallel-down/hands': [-180, 60],
  'shaft-parallel-down/grip-end': [-80, 60],
  'impact/hands': [80, 60],
  'impact/grip-end': [100, 60],
};
/** With the shaft parallel to the ground the clubhead points at the lens: the hands' place less one club length. */
const oneClubNearer: Rows = {
  'shaft-parallel-back/clubhead': [-210, 60],
  'shaft-parallel-down/clubhead': [-70, 60],
};

const read = (view: View, { position, point }: Place): Depth => {
  const moment = `${position}/${point}`;
  const found = (rows: Rows, from: DepthBase): Depth | null => {
    const name = rows[moment] === undefined ? point : moment;
    const row = rows[name];
    return row === undefined ? null : { ...namesOf(name), from, mm: row[0], u: row[1] };
  };
  const known =
    view === 'face-on'
      ? found(behindGripEnd, 'grip-end')
      : (found(oneClubNearer, 'club-nearer') ?? found(beyondBall, 'ball'));
  return known ?? { ...namesOf(point), from: 'ball', mm: 0, u: point === 'ball' ? 0 : 20 };
};

const depths = {
  'face-on': byPlace((place) => read('face-on', place)),
  'down-the-line': byPlace((place) => read('down-the-line', place)),
} as const;

/** How far a point lies beyond the ball, away from the camera; an unlisted point lies on the ground line of the ball. */
export const depthOf = (view: View, place: Place): Depth => depths[view](place);
