import { afterBlow, type PendulumBody, type PendulumState, stepPendulum, type Torques } from './pendulum.ts';

/** What the delivery must meet at impact and where it comes from; angles in radians in the plane, lengths in m. */
export type DeliveryAim = {
  readonly body: PendulumBody;
  readonly atImpact: PendulumState;
  /** Angle of the arms when the club is level on the way down. */
  readonly armsAtShaftParallel: number;
  /** Share of the speed that is left after the blow. */
  readonly speedKept: number;
};

/** The motion of both angles from shaft-parallel-down until `untilS`; times in seconds from impact. */
export type Delivery = {
  readonly fromS: number;
  readonly untilS: number;
  readonly torques: Torques;
  readonly at: (timeS: number) => PendulumState;
};

const stepS = 0.002;
const untilS = 0.042;
/** Mean turning speed of the club from level to impact against its speed at impact, for a sound release. */
const meanShare = 0.87;

/** Time from the level club to impact. @returns seconds */
export const deliveryS = (atImpact: Pick<PendulumState, 'theta2' | 'omega2'>): number =>
  (Math.PI / 2 + atImpact.theta2) / (meanShare * atImpact.omega2);

/**
 * The delivery of the club: the torques of shoulders and wrists, constant on the way down, are found so that the motion
 * comes from the wanted place with the club level; after the blow the rods swing on by themselves.
 *
 * @throws RangeError when no torques lead there
 * @source forward dynamics of pendulum.ts, boundary values by Newton's method
 */
export function deliver(aim: DeliveryAim): Delivery {
  const durationS = deliveryS(aim.atImpact);
  const steps = Math.ceil(durationS / stepS);
  const back = -durationS / steps;
  const torques = findTorques(aim, steps, back);
  const before = [aim.atImpact];
  for (let i = 0; i < steps; i += 1) before.push(stepPendulum(aim.body, last(before), torques, back));
  const after = [afterBlow(aim.body, aim.atImpact, aim.speedKept)];
  const free: Torques = { hubNm: 0, wristNm: 0 };
  for (let i = 0; i < Math.round(untilS / stepS); i += 1) {
    after.push(stepPendulum(aim.body, last(after), free, stepS));
  }
  const way = before.toReversed();
  const at = (timeS: number): PendulumState =>
    timeS <= 0 ? between(way, (timeS + durationS) / -back, -back) : between(after, timeS / stepS, stepS);
  return { fromS: -durationS, untilS, torques, at };
}

function findTorques(aim: DeliveryAim, steps: number, back: number): Torques {
  const miss = (torques: Torques): readonly [number, number] => {
    let state = aim.atImpact;
    for (let i = 0; i < steps; i += 1) state = stepPendulum(aim.body, state, torques, back);
    return [state.theta1 - aim.armsAtShaftParallel, state.theta2 + Math.PI / 2];
  };
  let hubNm = 60;
  let wristNm = 0;
  for (let round = 0; round < 12; round += 1) {
    const [m1, m2] = miss({ hubNm, wristNm });
    if (Math.hypot(m1, m2) < 1e-6) return { hubNm, wristNm };
    const [h1, h2] = miss({ hubNm: hubNm + 1, wristNm });
    const [w1, w2] = miss({ hubNm, wristNm: wristNm + 1 });
    const det = (h1 - m1) * (w2 - m2) - (w1 - m1) * (h2 - m2);
    hubNm -= ((w2 - m2) * m1 - (w1 - m1) * m2) / det;
    wristNm -= ((h1 - m1) * m2 - (h2 - m2) * m1) / det;
  }
  throw new RangeError('No torques deliver the club from there.');
}

function last(states: readonly PendulumState[]): PendulumState {
  const state = states.at(-1);
  if (state === undefined) throw new RangeError('A motion needs a state');
  return state;
}

/** Between two kept states by Hermite's cubic, whose slopes are the angular speeds. */
function between(states: readonly PendulumState[], place: number, spanS: number): PendulumState {
  const i = Math.min(states.length - 2, Math.max(0, Math.floor(place)));
  const from = states[i];
  const to = states[i + 1];
  if (from === undefined || to === undefined) throw new RangeError('A motion needs two states');
  const s = Math.min(1, Math.max(0, place - i));
  const angle = (a: number, b: number, va: number, vb: number): number => {
    const rise = b - a;
    return (
      a +
      va * spanS * s +
      (3 * rise - (2 * va + vb) * spanS) * s * s +
      ((va + vb) * spanS - 2 * rise) * s ** 3
    );
  };
  const mix = (a: number, b: number) => a + (b - a) * s;
  return {
    theta1: angle(from.theta1, to.theta1, from.omega1, to.omega1),
    theta2: angle(from.theta2, to.theta2, from.omega2, to.omega2),
    omega1: mix(from.omega1, to.omega1),
    omega2: mix(from.omega2, to.omega2),
  };
}
