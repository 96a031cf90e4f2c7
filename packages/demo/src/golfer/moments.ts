import { lengthOf, minus } from './space.ts';
import type { Swing } from './swing.ts';

export const moments = [
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
export type Moment = (typeof moments)[number];
export type MomentTimes = Readonly<Record<Moment, number>>;

const scanS = 0.01;

/** When each moment of the swing happens, found on the moving golfer, in seconds from the first frame. */
export function momentTimes(swing: Swing): MomentTimes {
  const { timing } = swing;
  const shaft = (fromS: number, toS: number) =>
    crossingS((timeS) => swing.clubAt(timeS).direction.y, fromS, toS);
  const leadArm = (fromS: number, toS: number) =>
    crossingS(
      (timeS) => {
        const { wrist, shoulder } = swing.poseAt(timeS).leadArm;
        return wrist.y - shoulder.y;
      },
      fromS,
      toS,
    );
  const top = reversalS(swing, timing.leadArmParallelBack, timing.leadArmParallelDown);
  const leadArmDown = leadArm(top, timing.impact);
  return {
    // The last still instant, the club behind the ball.
    address: timing.start,
    'shaft-parallel-back': shaft(timing.start + 0.05, timing.leadArmParallelBack),
    'lead-arm-parallel-back': leadArm(timing.start + 0.05, top),
    top,
    'lead-arm-parallel-down': leadArmDown,
    'shaft-parallel-down': shaft(leadArmDown, timing.impact),
    impact: timing.impact,
    'shaft-parallel-through': shaft(timing.impact, timing.impact + 0.15),
    finish: timing.finish,
  };
}

/** The frame nearest to each moment; for address the last one before the club moves. */
export function frameOfMoments(times: MomentTimes, fps: number): Record<Moment, number> {
  const frames = moments.map((moment) => [moment, Math.round(times[moment] * fps)]);
  return {
    ...(Object.fromEntries(frames) as Record<Moment, number>),
    address: Math.floor(times.address * fps),
  };
}

/** First change of sign between two times, to a hundredth of a millisecond. @throws RangeError when there is none */
function crossingS(of: (timeS: number) => number, fromS: number, toS: number): number {
  let low = fromS;
  const sign = Math.sign(of(fromS));
  for (let high = fromS + scanS; high <= toS + scanS; high += scanS) {
    if (Math.sign(of(high)) !== sign) {
      let end = high;
      while (end - low > 1e-5) {
        const middle = (low + end) / 2;
        if (Math.sign(of(middle)) === sign) low = middle;
        else end = middle;
      }
      return (low + end) / 2;
    }
    low = high;
  }
  throw new RangeError('The swing does not reach this moment');
}

/** When the club changes direction: where it turns least, first roughly, then to half a millisecond. */
function reversalS(swing: Swing, fromS: number, toS: number): number {
  const turn = (timeS: number) =>
    lengthOf(minus(swing.clubAt(timeS + 0.002).direction, swing.clubAt(timeS - 0.002).direction));
  const least = (lowS: number, highS: number, stepS: number): number => {
    let best = lowS;
    let leastTurn = turn(lowS);
    for (let timeS = lowS + stepS; timeS < highS; timeS += stepS) {
      const here = turn(timeS);
      if (here < leastTurn) [best, leastTurn] = [timeS, here];
    }
    return best;
  };
  const rough = least(fromS + 0.05, toS - 0.03, 0.008);
  return least(rough - 0.008, rough + 0.008, 0.0005);
}
