import { type Pinhole, type Spot3, seeSpot } from '../camera/see-spot.ts';
import { type Hand, type Mark, type Picture, type Point, type Position, positions } from './marks.ts';
import type { Place } from './place.ts';

/** A made-up swing seen from behind: what its measurements must find, in mm and degrees; the rest is an invented body. */
export type PlantedBehind = Pinhole & {
  readonly hand: Hand;
  readonly trunkBendDeg: number;
  readonly trunkBendLostDeg: number;
  readonly handsToThighs: number;
  readonly handsBeyondToes: number;
  readonly seatTowardBall: number;
  readonly handsTowardBall: number;
  readonly handsRise: number;
  readonly headRise: number;
  readonly shaftSteeperDeg: number;
  readonly clubheadOutsideBack: number;
  readonly clubheadOutsideDown: number;
  readonly toesOpenDeg: number;
};

export const soundBehind: PlantedBehind = {
  hand: 'right',
  trunkBendDeg: 35,
  trunkBendLostDeg: 3,
  handsToThighs: 140,
  handsBeyondToes: 190,
  seatTowardBall: 15,
  handsTowardBall: 20,
  handsRise: 45,
  headRise: -10,
  shaftSteeperDeg: 4,
  clubheadOutsideBack: 20,
  clubheadOutsideDown: -60,
  toesOpenDeg: 1,
  distanceMm: 3900,
  lensHeightMm: 1000,
  yawDeg: 0,
  rollDeg: 0,
  focalPx: 1400,
};

const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** An 8-iron at address: 927 mm at 63 degrees, held 110 mm down the grip, leaning 3 degrees towards the target. */
const lengthMm = 927;
const lie = radians(63);
const lean = Math.cos(radians(3));
const onShaft = (mm: number): readonly [number, number] => [
  mm * lean * Math.cos(lie),
  mm * lean * Math.sin(lie),
];

/** The places of the swing in mm: away from the ball line, up, towards the target. */
const spotsOf = (swing: PlantedBehind): ReadonlyMap<`${Position}/${Point}`, Spot3> => {
  const [handsLevel, handsUp] = onShaft(lengthMm - 110);
  const trunk = (lengthUp: number, bendDeg: number) => lengthUp * Math.tan(radians(bendDeg));
  const hip = [700, 950] as const;
  const down = radians(63 + swing.shaftSteeperDeg);
  const gripDown = [520, 960] as const;
  const toes = handsLevel + swing.handsBeyondToes;
  const backHands = 480;
  const downHands = 430;
  return new Map<`${Position}/${Point}`, Spot3>([
    ['address/ball', [0, 21.3, 0]],
    ['address/clubhead', [...onShaft(15), -30]],
    ['address/grip-end', [...onShaft(lengthMm), 30]],
    ['address/hands', [handsLevel, handsUp, 20]],
    ['address/toe-line', [handsLevel + swing.handsBeyondToes, 20, -340]],
    // The ground: a stick a hand outside the ball, and the tips of the shoes a stance apart.
    ['address/target-stick', [-120, 0, -400]],
    ['address/target-stick-ahead', [-120, 0, 790]],
    ['address/trail-toe', [toes, 0, -200]],
    ['address/lead-toe', [toes + 400 * Math.tan(radians(swing.toesOpenDeg)), 0, 200]],
    ['address/thigh-front', [handsLevel + swing.handsToThighs, 700, -180]],
    ['address/seat-line', [860, 930, -70]],
    ['address/hip-middle', [...hip, -60]],
    ['address/neck-base', [hip[0] - trunk(380, swing.trunkBendDeg), hip[1] + 380, -50]],
    ['address/head-centre', [370, 1480, -60]],
    ['shaft-parallel-back/hands', [backHands, 850, -310]],
    ['shaft-parallel-back/clubhead', [backHands - swing.clubheadOutsideBack, 860, -210 - lengthMm]],
    ['lead-arm-parallel-down/grip-end', [...gripDown, -450]],
    [
      'lead-arm-parallel-down/clubhead',
      [gripDown[0] + 800 * Math.cos(down), gripDown[1] + 800 * Math.sin(down), -400],
    ],
    ['shaft-parallel-down/hands', [downHands, 840, -180]],
    ['shaft-parallel-down/clubhead', [downHands - swing.clubheadOutsideDown, 830, -70 - lengthMm]],
    ['impact/seat-line', [860 - swing.seatTowardBall, 940, 30]],
    ['impact/hands', [handsLevel - swing.handsTowardBall, handsUp + swing.handsRise, 80]],
    ['impact/hip-middle', [680, 960, 20]],
    ['impact/neck-base', [680 - trunk(390, swing.trunkBendDeg - swing.trunkBendLostDeg), 960 + 390, -50]],
    ['impact/head-centre', [380, 1480 + swing.headRise, -60]],
  ]);
};

/** A picture 1080 by 1920 pixels of nine frames. */
export const behindPicture: Picture = {
  widthPx: 1080,
  heightPx: 1920,
  frameTimesS: Array.from({ length: 9 }, (_, frame) => frame / 60),
};

/**
 * All marks of a swing from behind, seen without error by a pinhole camera that looks through the hands.
 *
 * @param deeper - how much farther towards the target a place lies than the usual body has it, mm
 * @source pinhole geometry; the body is an invention
 */
export function plantedBehind(
  changes: Partial<PlantedBehind> = {},
  deeper: (place: Place) => number = () => 0,
): readonly Mark[] {
  const swing = { ...soundBehind, ...changes };
  return [...spotsOf(swing)].map(([name, [level, up, depth]]) => {
    const [position, point] = name.split('/') as [Position, Point];
    const { levelPx, upPx } = seeSpot([level, up, depth + deeper({ position, point })], swing, 370);
    // The body of a right-hander stands on the left of the picture.
    return {
      position,
      point,
      frame: positions.indexOf(position),
      x: behindPicture.widthPx / 2 + (swing.hand === 'right' ? -levelPx : levelPx),
      y: behindPicture.heightPx / 2 - upPx,
      source: 'coach' as const,
    };
  });
}
