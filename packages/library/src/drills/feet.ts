import type { StationObject } from '../types.ts';

type Stance = {
  /** How far the ball lies inside the lead heel, in mm. */
  readonly ballInsideLeadHeelMm?: number;
  readonly stanceMm?: number;
  /** How far the trail foot is drawn back from the toe line, in mm. */
  readonly trailBackMm?: number;
  /** How far the trail toe is turned out from the ball, in degrees. */
  readonly trailOutDeg?: number;
  /** Ball to toes; with a mid-iron about 52 cm. */
  readonly ballToToesMm?: number;
};

const footLengthMm = 280;
const footWidthMm = 100;
// Common practice, no source.
const usualBallToToesMm = 520;

/** Two feet for a mid-iron: two ball diameters inside the lead heel, heels 40 cm apart, unless said otherwise. */
export const feet = (stance: Stance = {}): readonly StationObject[] => {
  const { ballInsideLeadHeelMm = 85, stanceMm = 400, trailBackMm = 0, trailOutDeg = 0 } = stance;
  const ballToToesMm = stance.ballToToesMm ?? usualBallToToesMm;
  const foot = (
    what: 'lead-foot' | 'trail-foot',
    xMm: number,
    backMm: number,
    outDeg: number,
    label: string,
  ): StationObject => ({
    what,
    xMm,
    yMm: -(ballToToesMm + backMm + footLengthMm / 2),
    lengthMm: footLengthMm,
    widthMm: footWidthMm,
    rotationDeg: 90 + outDeg,
    label,
  });
  return [
    foot('lead-foot', ballInsideLeadHeelMm, 0, 0, '{lead} foot'),
    foot('trail-foot', ballInsideLeadHeelMm - stanceMm, trailBackMm, trailOutDeg, '{trail} foot'),
  ];
};

/** The struck ball: always the origin of the station. */
export const ballAtOrigin: StationObject = {
  what: 'ball',
  xMm: 0,
  yMm: 0,
  lengthMm: 43,
  widthMm: 43,
  rotationDeg: 0,
  label: 'ball',
};
