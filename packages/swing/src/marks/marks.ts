/**
 * Marks: single points on single frames, in picture pixels (x right, y down, origin top left of the upright rendition).
 * The words are the house vocabulary; a position is a moment of the swing, a point is a place on player, club or ground.
 */
export const views = ['face-on', 'down-the-line'] as const;
export type View = (typeof views)[number];

export const swingLengths = ['rehearsal', 'hip-high', 'three-quarter', 'full'] as const;
export type SwingLength = (typeof swingLengths)[number];

export const hands = ['right', 'left'] as const;
/** The hand a player plays with: a right-handed player's lead side is the left. */
export type Hand = (typeof hands)[number];

export const positions = [
  'address',
  'shaft-parallel-back',
  'lead-arm-parallel-back',
  'top',
  'lead-arm-parallel-down',
  'shaft-parallel-down',
  'impact',
  'shaft-parallel-through',
  'finish',
] as const;
export type Position = (typeof positions)[number];

export const points = [
  'ball',
  'lead-heel',
  'trail-heel',
  'lead-ankle',
  'trail-ankle',
  'hip-middle',
  'neck-base',
  'head-centre',
  'lead-shoulder',
  'lead-elbow',
  'lead-wrist',
  'grip-end',
  'clubhead',
  'shaft-mid',
  'lead-thigh-inside',
  'thigh-front',
  'seat-line',
  'toe-line',
  'lead-toe',
  'trail-toe',
  'hands',
  'target-stick',
  'target-stick-ahead',
] as const;
export type Point = (typeof points)[number];

export type MarkSource = 'coach' | 'suggested' | 'carried';

/** One point placed on one frame. `x` and `y` are pixels of the rendition, `frame` its index in the frame-time table. */
export type Mark = {
  readonly position: Position;
  readonly point: Point;
  readonly frame: number;
  readonly x: number;
  readonly y: number;
  readonly source: MarkSource;
};

/** What the marks were placed on: size in pixels and the time of each frame in seconds. */
export type Picture = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly frameTimesS: readonly number[];
};

/** The swing as it was filmed. */
export type Setting = {
  readonly view: View;
  readonly hand: Hand;
  readonly club: Club;
  readonly swingLength: SwingLength;
};

export const clubs = [
  'driver',
  'fairway',
  'hybrid',
  '5-iron',
  '6-iron',
  '7-iron',
  '8-iron',
  '9-iron',
  'wedge',
] as const;
export type Club = (typeof clubs)[number];
