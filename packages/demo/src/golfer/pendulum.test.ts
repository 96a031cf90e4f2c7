import { describe, expect, it } from 'vitest';
import { deliver } from './delivery.ts';
import { afterBlow, headVelocity, type PendulumBody, pendulumEnergy, stepPendulum } from './pendulum.ts';

const body: PendulumBody = {
  armM: 0.64,
  clubM: 0.857,
  armInertia: 1.15,
  armMoment: 2.4,
  clubKg: 0.42,
  clubMiddleM: 0.63,
  clubInertia: 0.22,
  gravity: 9.81,
};
const free = { hubNm: 0, wristNm: 0 };
const degrees = Math.PI / 180;

describe('the double pendulum', () => {
  it('keeps its energy while no torque acts (conservation of energy)', () => {
    let state = { theta1: -1.9, theta2: -3, omega1: 2, omega2: -1 };
    const start = pendulumEnergy(body, state);
    for (let i = 0; i < 2000; i += 1) state = stepPendulum(body, state, free, 0.0005);
    expect(pendulumEnergy(body, state)).toBeCloseTo(start, 6);
  });

  it('gains the work of a torque at the hub (work and energy)', () => {
    let state = { theta1: -1.5, theta2: -2.6, omega1: 0, omega2: 0 };
    const start = pendulumEnergy(body, state);
    const from = state.theta1;
    for (let i = 0; i < 400; i += 1) state = stepPendulum(body, state, { hubNm: 50, wristNm: 0 }, 0.0005);
    expect(pendulumEnergy(body, state) - start).toBeCloseTo(50 * (state.theta1 - from), 6);
  });

  it('swings like a compound pendulum when the club weighs nothing: T = 2 pi sqrt(I / m g l) (Huygens 1673)', () => {
    const light: PendulumBody = { ...body, clubKg: 1e-9, clubInertia: 1e-9 };
    const quarterS = (Math.PI / 2) * Math.sqrt(1.15 / (2.4 * 9.81));
    let state = { theta1: 0.001, theta2: 0.001, omega1: 0, omega2: 0 };
    const steps = 2000;
    for (let i = 0; i < steps; i += 1) state = stepPendulum(light, state, free, quarterS / steps);
    expect(state.theta1).toBeCloseTo(0, 7);
  });

  it('runs back the way it came', () => {
    const start = { theta1: -1, theta2: -2.4, omega1: 9, omega2: 12 };
    let state: typeof start = start;
    const torques = { hubNm: 120, wristNm: 4 };
    for (let i = 0; i < 60; i += 1) state = stepPendulum(body, state, torques, 0.001);
    for (let i = 0; i < 60; i += 1) state = stepPendulum(body, state, torques, -0.001);
    expect(state.theta1).toBeCloseTo(start.theta1, 6);
    expect(state.theta2).toBeCloseTo(start.theta2, 6);
  });

  it('a clubhead of both rods in line goes at a w1 + c w2 (closed form)', () => {
    const [along, up] = headVelocity(body, { theta1: 0, theta2: 0, omega1: 11, omega2: 33.5 });
    expect(along).toBeCloseTo(0.64 * 11 + 0.857 * 33.5, 9);
    expect(up).toBe(0);
  });

  it('the blow takes the wanted share of the speed, mostly out of the club', () => {
    const before = { theta1: 0.05, theta2: -0.12, omega1: 11, omega2: 33.5 };
    const after = afterBlow(body, before, 0.82);
    expect(headVelocity(body, after)[0]).toBeCloseTo(0.82 * headVelocity(body, before)[0], 9);
    expect(after.omega2).toBeLessThan(before.omega2);
    expect(Math.abs(after.omega1 - before.omega1)).toBeLessThan(0.5);
  });
});

describe('the delivery', () => {
  const aim = {
    body,
    atImpact: { theta1: 2 * degrees, theta2: -7 * degrees, omega1: 11, omega2: 33.5 },
    armsAtShaftParallel: -20 * degrees,
    speedKept: 0.82,
  };

  it('comes from the level club and meets impact as aimed', () => {
    const { fromS, at } = deliver(aim);
    expect(at(fromS).theta2).toBeCloseTo(-Math.PI / 2, 5);
    expect(at(fromS).theta1).toBeCloseTo(aim.armsAtShaftParallel, 5);
    expect(at(0).theta1).toBeCloseTo(aim.atImpact.theta1, 9);
    expect(at(0).omega2).toBeCloseTo(33.5, 6);
  });

  it('a club that is thrown early needs less of the shoulders and wrists than one that is held', () => {
    const thrown = deliver({ ...aim, armsAtShaftParallel: -38 * degrees }).torques;
    const held = deliver(aim).torques;
    expect(thrown.hubNm).toBeLessThan(held.hubNm);
    expect(thrown.wristNm).toBeLessThan(held.wristNm);
  });

  it('says so when no torques lead there', () => {
    expect(() => deliver({ ...aim, armsAtShaftParallel: Number.NaN })).toThrow(RangeError);
  });
});
