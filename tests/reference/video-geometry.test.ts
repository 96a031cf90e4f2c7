import { propagate } from '@ballfirst/numbers/propagate';
import { seeSpot } from '@ballfirst/swing/camera/see-spot';
import { positions } from '@ballfirst/swing/marks/marks';
import { tempoOf } from '@ballfirst/swing/tempo';
import { describe, expect, it } from 'vitest';

const camera = { distanceMm: 4000, lensHeightMm: 0, yawDeg: 0, rollDeg: 0, focalPx: 1000 };
const degrees = (radians: number) => (radians * 180) / Math.PI;

// Source: pinhole geometry, derived independently of this project.
describe('what a camera does to lengths', () => {
  it.each([
    [4000, 100, 1.026],
    [4000, 300, 1.081],
    [4000, 500, 1.143],
    [3000, 300, 1.111],
    [6000, 500, 1.091],
  ])('at %d mm a point %d mm nearer looks %d times as long', (distanceMm, nearer, times) => {
    const seen = (depth: number) => seeSpot([200, 0, depth], { ...camera, distanceMm }).levelPx;
    expect(seen(-nearer) / seen(0)).toBeCloseTo(times, 3);
  });

  // A camera far away, so that only the turn counts.
  const turned = (yawDeg: number) => ({ ...camera, yawDeg, distanceMm: 1e9, focalPx: 1e9 });
  it.each([
    [5, 0.996],
    [10, 0.985],
    [20, 0.94],
  ])('turned by %d degrees a level length shrinks to %d', (yaw, share) => {
    expect(seeSpot([100, 0, 0], turned(yaw)).levelPx / 100).toBeCloseTo(share, 3);
  });
  it.each([
    [45, 10, 44.56],
    [45, 20, 43.22],
    [45, 30, 40.89],
    [30, 10, 29.62],
  ])('and a lean of %d degrees, turned by %d, reads %d', (lean, yaw, read) => {
    const top = seeSpot([100 * Math.tan((lean * Math.PI) / 180), 100, 0], turned(yaw));
    expect(degrees(Math.atan2(top.levelPx, top.upPx))).toBeCloseTo(read, 2);
  });
  it.each([
    [10, 52],
    [20, 103],
  ])('turned by %d degrees a point 300 mm deeper moves by %d mm', (yaw, mm) => {
    expect(Math.abs(seeSpot([0, 0, 300], turned(yaw)).levelPx)).toBeCloseTo(mm, 0);
  });

  // Source: sqrt(2) e / L for two clicks of 2 pixels.
  it.each([
    [50, 3.2],
    [100, 1.6],
    [200, 0.8],
    [400, 0.4],
  ])('two clicks on %d pixels: %d degrees', (length, doubt) => {
    const { u } = propagate(
      ([a = 0, b = 0]) => degrees(Math.atan2(b - a, length)),
      [0, 0],
      [
        [4, 0],
        [0, 4],
      ],
    );
    expect(u).toBeCloseTo(doubt, 1);
  });
});

describe('time back to time down', () => {
  // Source: counting, one frame either way on both counts; derived independently of this project.
  it.each([
    [30, 24, 8, 2.56, 3.57],
    [60, 48, 16, 2.76, 3.27],
    [120, 96, 32, 2.88, 3.13],
    [240, 192, 64, 2.94, 3.06],
  ])('at %d frames a second %d to %d is 3, from %d to %d', (rate, back, down, low, high) => {
    const tempo = tempoOf({ backS: back / rate, downS: down / rate, frameS: 1 / rate });
    expect(tempo.ratio).toBeCloseTo(3, 9);
    expect(tempo.low).toBeCloseTo(low, 2);
    expect(tempo.high).toBeCloseTo(high, 2);
  });
});

describe('moments of the swing', () => {
  // Source: McNally et al. 2019, "GolfDB" (CVPR workshops, arXiv 1903.06528), the eight events in their order; their
  // definitions from memory: toe-up and mid-follow-through are the shaft parallel to the ground, mid-backswing and
  // mid-downswing the lead arm parallel.
  it('stand in the published order', () => {
    const published = [
      'address',
      'shaft-parallel-back',
      'lead-arm-parallel-back',
      'top',
      'lead-arm-parallel-down',
      'impact',
      'shaft-parallel-through',
      'finish',
    ] as const;
    const ours = positions.filter((position) => position !== 'shaft-parallel-down');
    expect(ours).toEqual(published);
  });
});
