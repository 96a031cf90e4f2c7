import type { Delivery } from './delivery.ts';
import type { SwingShape } from './traits.ts';

/** Times of the turning points of a swing in seconds from the first frame. */
export type Timing = {
  readonly start: number;
  readonly shaftParallelBack: number;
  readonly leadArmParallelBack: number;
  readonly top: number;
  readonly leadArmParallelDown: number;
  readonly shaftParallelDown: number;
  readonly impact: number;
  readonly delivered: number;
  readonly released: number;
  readonly finish: number;
  readonly end: number;
};

/** @param startS when the club leaves the ball; the recording ends .28 s after the finish */
export function timingOf(shape: SwingShape, delivery: Delivery, startS: number): Timing {
  const top = startS + shape.backS;
  const downS = shape.backS / shape.tempoRatio;
  const impact = top + downS;
  return {
    start: startS,
    shaftParallelBack: startS + 0.39 * shape.backS,
    leadArmParallelBack: startS + 0.585 * shape.backS,
    top,
    leadArmParallelDown: impact - 0.5 * downS,
    shaftParallelDown: impact + delivery.fromS,
    impact,
    delivered: impact + delivery.untilS,
    released: impact + 0.2,
    finish: impact + 0.52,
    end: impact + 0.8,
  };
}
