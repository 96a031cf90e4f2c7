/**
 * Arms and club as two hinged rods in one inclined plane, driven by torques at the hub and at the wrists. Angles in
 * radians from "straight down the plane", positive towards the target; metres, kilograms, seconds.
 *
 *        hub o                 theta1: hub to hands
 *             \                theta2: hands to clubhead
 *        hands o
 *               \
 *                o clubhead
 */
export type PendulumState = {
  readonly theta1: number;
  readonly theta2: number;
  readonly omega1: number;
  readonly omega2: number;
};

export type PendulumBody = {
  readonly armM: number;
  readonly clubM: number;
  /** Inertia of arms and shoulders about the hub, kg m2. */
  readonly armInertia: number;
  /** First moment of the arms about the hub, kg m. */
  readonly armMoment: number;
  readonly clubKg: number;
  /** Middle of mass of the club from the hands, m, and its inertia about the hands, kg m2. */
  readonly clubMiddleM: number;
  readonly clubInertia: number;
  /** The part of gravity that acts along the plane, m/s2. */
  readonly gravity: number;
};

export type Torques = { readonly hubNm: number; readonly wristNm: number };

/** The mass matrix [[a, c], [c, b]] of the two angles. */
export function massOf(body: PendulumBody, state: PendulumState) {
  return {
    a: body.armInertia + body.clubKg * body.armM ** 2,
    b: body.clubInertia,
    c: body.clubKg * body.clubMiddleM * body.armM * Math.cos(state.theta1 - state.theta2),
  };
}

/**
 * Kinetic and potential energy in joules; constant while no torque acts.
 *
 * @source Lagrange's function of the double pendulum (any textbook of mechanics)
 */
export function pendulumEnergy(body: PendulumBody, state: PendulumState): number {
  const { a, b, c } = massOf(body, state);
  const { omega1, omega2 } = state;
  const kinetic = 0.5 * a * omega1 ** 2 + 0.5 * b * omega2 ** 2 + c * omega1 * omega2;
  const upper = (body.armMoment + body.clubKg * body.armM) * Math.cos(state.theta1);
  return kinetic - body.gravity * (upper + body.clubKg * body.clubMiddleM * Math.cos(state.theta2));
}

/** Angular accelerations of both rods in rad/s2 under gravity and torques. */
function accelerations(body: PendulumBody, state: PendulumState, torques: Torques) {
  const { a, b, c } = massOf(body, state);
  const turning = body.clubKg * body.clubMiddleM * body.armM * Math.sin(state.theta1 - state.theta2);
  const upper = body.gravity * (body.armMoment + body.clubKg * body.armM) * Math.sin(state.theta1);
  const lower = body.gravity * body.clubKg * body.clubMiddleM * Math.sin(state.theta2);
  const f1 = torques.hubNm - torques.wristNm - turning * state.omega2 ** 2 - upper;
  const f2 = torques.wristNm + turning * state.omega1 ** 2 - lower;
  const d = a * b - c * c;
  return { alpha1: (b * f1 - c * f2) / d, alpha2: (a * f2 - c * f1) / d };
}

const moved = (
  s: PendulumState,
  rate: { alpha1: number; alpha2: number; omega1: number; omega2: number },
  h: number,
): PendulumState => ({
  theta1: s.theta1 + h * rate.omega1,
  theta2: s.theta2 + h * rate.omega2,
  omega1: s.omega1 + h * rate.alpha1,
  omega2: s.omega2 + h * rate.alpha2,
});

/** One step of Runge and Kutta of fourth order; a negative step goes back in time. */
export function stepPendulum(
  body: PendulumBody,
  state: PendulumState,
  torques: Torques,
  stepS: number,
): PendulumState {
  const rateAt = (s: PendulumState) => ({
    ...accelerations(body, s, torques),
    omega1: s.omega1,
    omega2: s.omega2,
  });
  const k1 = rateAt(state);
  const k2 = rateAt(moved(state, k1, stepS / 2));
  const k3 = rateAt(moved(state, k2, stepS / 2));
  const k4 = rateAt(moved(state, k3, stepS));
  const mean = (of: 'alpha1' | 'alpha2' | 'omega1' | 'omega2') =>
    (k1[of] + 2 * k2[of] + 2 * k3[of] + k4[of]) / 6;
  const rate = {
    alpha1: mean('alpha1'),
    alpha2: mean('alpha2'),
    omega1: mean('omega1'),
    omega2: mean('omega2'),
  };
  return moved(state, rate, stepS);
}

/** Velocity of the clubhead in m/s: along the line and up the plane, without the hub's own. */
export function headVelocity(body: PendulumBody, state: PendulumState): readonly [along: number, up: number] {
  const arm = body.armM * state.omega1;
  const club = body.clubM * state.omega2;
  return [
    arm * Math.cos(state.theta1) + club * Math.cos(state.theta2),
    arm * Math.sin(state.theta1) + club * Math.sin(state.theta2),
  ];
}

/**
 * The blow of the ball: an impulse at the clubhead against its motion that leaves `kept` of its speed along the line.
 *
 * @param kept share of the speed after the blow, 0..1
 * @source impulse and momentum of linked rods: M dOmega = J' p
 */
export function afterBlow(body: PendulumBody, state: PendulumState, kept: number): PendulumState {
  const { a, b, c } = massOf(body, state);
  const d = a * b - c * c;
  const j1 = body.armM * Math.cos(state.theta1);
  const j2 = body.clubM * Math.cos(state.theta2);
  const turn1 = (b * j1 - c * j2) / d;
  const turn2 = (a * j2 - c * j1) / d;
  const [along] = headVelocity(body, state);
  const impulse = ((kept - 1) * along) / (j1 * turn1 + j2 * turn2);
  return {
    ...state,
    omega1: state.omega1 + impulse * turn1,
    omega2: state.omega2 + impulse * turn2,
  };
}
