import type { View } from './marks.ts';
import type { Place } from './place.ts';

/** From where a depth counts: the ball, the grip end at address, or one club length nearer to the lens than the ball. */
export type DepthBase = 'ball' | 'grip-end' | 'club-nearer';

export type Depth = {
  /** Places with the same name share their error. */
  readonly name: string;
  readonly from: DepthBase;
  readonly mm: number;
  readonly u: number;
};

type Row = readonly [mm: number, u: number];
type Rows = Readonly<Partial<Record<string, Row>>>;

/** Face-on, behind the grip end at address, away from the camera. Common practice, no source. */
const behindGripEnd: Rows = {
  'grip-end': [0, 40],
  hands: [5, 40],
  'lead-wrist': [10, 40],
  'lead-elbow': [20, 60],
  'lead-thigh-inside': [160, 50],
  'thigh-front': [150, 60],
  'lead-ankle': [210, 50],
  'trail-ankle': [210, 50],
  'lead-heel': [290, 50],
  'trail-heel': [290, 50],
  'hip-middle': [290, 60],
  'neck-base': [20, 70],
  'head-centre': [-30, 70],
  'lead-shoulder': [-10, 80],
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
  'address/grip-end': [40, 40],
  'address/hands': [20, 40],
  'toe-line': [-260, 80],
  'thigh-front': [-160, 80],
  'address/seat-line': [-70, 80],
  'impact/seat-line': [30, 100],
  'hip-middle': [-60, 70],
  'impact/hip-middle': [20, 80],
  'neck-base': [-50, 70],
  'head-centre': [-60, 70],
  'shaft-parallel-back/hands': [-250, 100],
  'shaft-parallel-back/grip-end': [-250, 100],
  'lead-arm-parallel-down/hands': [-350, 100],
  'lead-arm-parallel-down/grip-end': [-330, 100],
  'lead-arm-parallel-down/clubhead': [-450, 200],
  'shaft-parallel-down/hands': [-100, 110],
  'shaft-parallel-down/grip-end': [-80, 110],
  'impact/hands': [80, 60],
  'impact/grip-end': [100, 60],
};
/** With the shaft parallel to the ground the clubhead points at the lens: the hands' place less one club length. */
const oneClubNearer: Rows = {
  'shaft-parallel-back/clubhead': [-230, 110],
  'shaft-parallel-down/clubhead': [-60, 120],
};

/** How far a point lies beyond the ball, away from the camera; an unlisted point lies on the ground line of the ball. */
export function depthOf(view: View, { position, point }: Place): Depth {
  const moment = `${position}/${point}`;
  const found = (rows: Rows, from: DepthBase): Depth | null => {
    const name = rows[moment] === undefined ? point : moment;
    const row = rows[name];
    return row === undefined ? null : { name, from, mm: row[0], u: row[1] };
  };
  const known =
    view === 'face-on'
      ? found(behindGripEnd, 'grip-end')
      : (found(oneClubNearer, 'club-nearer') ?? found(beyondBall, 'ball'));
  return known ?? { name: point, from: 'ball', mm: 0, u: point === 'ball' ? 0 : 20 };
}
