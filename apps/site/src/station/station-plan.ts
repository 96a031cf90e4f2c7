import type { Reply } from '@ballfirst/contracts/client';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';

type Drill = NonNullable<Reply<'readReply'>['programme']>['drill'];
export type Station = Drill['stations'][number];
export type StationObject = Station['objects'][number];

/** A box of the drawing: `u` to the right, `v` down, in drawing units, the ball at 0, 0. */
export type Box = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

/** An object as it is drawn: the middle, the two sides, the turn in the sense of SVG, and the box around it. */
export type Placed = {
  readonly object: StationObject;
  readonly u: number;
  readonly v: number;
  readonly length: number;
  readonly width: number;
  readonly turnDeg: number;
  readonly box: Box;
};

/** Drawing units a millimetre: every station is drawn to the one scale, so that two of them can be compared. */
export const unitsPerMm = 0.4;

/** The target lies left of a right-handed player who stands at the foot of the drawing, right of a left-handed one. */
export const towardsTarget = (hand: PlayingHand): 1 | -1 => (hand === 'right' ? -1 : 1);

/** A station object on the drawing. Station: x towards the target, y away from the player, mm, turned from x towards y. */
export const placeObject = (object: StationObject, hand: PlayingHand): Placed => {
  const towards = towardsTarget(hand);
  const turn = (object.rotationDeg * Math.PI) / 180;
  const [cos, sin] = [Math.abs(Math.cos(turn)), Math.abs(Math.sin(turn))];
  const length = object.lengthMm * unitsPerMm;
  const width = object.widthMm * unitsPerMm;
  const u = towards * object.xMm * unitsPerMm;
  const v = -object.yMm * unitsPerMm;
  const [halfU, halfV] = [(cos * length + sin * width) / 2, (sin * length + cos * width) / 2];
  const box = { left: u - halfU, right: u + halfU, top: v - halfV, bottom: v + halfV };
  const turnDeg = (Math.atan2(-Math.sin(turn), towards * Math.cos(turn)) * 180) / Math.PI;
  return { object, u, v, length, width, turnDeg, box };
};

export const around = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map(({ left }) => left)),
  right: Math.max(...boxes.map(({ right }) => right)),
  top: Math.min(...boxes.map(({ top }) => top)),
  bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
});

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
