import { seeSpot } from '@ballfirst/swing/camera/see-spot';
import { usualStick } from '@ballfirst/swing/camera/stick-tilt';
import { expect, it } from 'vitest';
import type { Mark } from '../_marking/marking.ts';
import { readTrail } from './read-trail.ts';

const picture = {
  widthPx: 1080,
  heightPx: 1920,
  frameTimesS: Array.from({ length: 240 }, (_, frame) => frame / 240),
};
const setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
const camera = { distanceMm: 3900, lensHeightMm: 1000, yawDeg: 0, rollDeg: 0, focalPx: 1400 };
const spotPx = (spot: readonly [number, number, number]) => {
  const { levelPx, upPx } = seeSpot(spot, camera);
  return { x: 540 + levelPx, y: 960 - upPx };
};
const [radius, lowPoint, plane] = [1300, 95, (61.5 * Math.PI) / 180];
/** A circle in a tilted plane whose lowest point lies 95 mm ahead of the ball, which is met on frame 120.3. */
const trail = Array.from({ length: 9 }, (_, index) => {
  const frame = 116 + index;
  const since = (frame - 120.3) / 240;
  const psi = -Math.asin(lowPoint / radius) + (39_000 / radius) * since * (since < 0 ? 1 : 0.82);
  const rise = Math.sqrt(radius ** 2 - lowPoint ** 2) - radius * Math.cos(psi);
  const x = lowPoint + radius * Math.sin(psi);
  return { x, point: { frame, ...spotPx([x, 21.3 + rise * Math.sin(plane), rise * Math.cos(plane)]) } };
})
  .filter(({ x }) => Math.abs(x) < 600)
  .map(({ point }) => point);
const mark = (point: Mark['point'], spot: readonly [number, number, number]): Mark => ({
  ...{ position: 'address', point, frame: 0, source: 'coach' },
  ...spotPx(spot),
});
const half = usualStick.lengthMm / 2;
const marks = [
  mark('ball', [0, 21.3, 0]),
  mark('target-stick', [-half, 0, 0]),
  mark('target-stick-ahead', [half, 0, 0]),
];

it('finds the lowest point of a planted arc within twice its doubt', () => {
  const reading = readTrail(trail, marks, picture, setting);
  if (reading.kind === 'refused') throw new Error(reading.words);
  expect(Math.abs(reading.aheadMm - lowPoint)).toBeLessThan(2 * reading.uMm);
  expect(reading.uMm).toBeLessThan(40);
});

it('says in words why there is none', () => {
  const words = (...given: Parameters<typeof readTrail>) => {
    const reading = readTrail(...given);
    return reading.kind === 'refused' ? reading.words : null;
  };
  expect(words(trail.slice(0, 2), marks, picture, setting)).toMatch(/fewer than three frames/);
  expect(words(trail, [], picture, setting)).toMatch(/ball is not marked/);
  expect(words(trail, marks, picture, { ...setting, view: 'down-the-line' })).toMatch(
    /down-the-line picture does not show it/,
  );
  expect(words(trail, marks.slice(0, 2), picture, setting)).not.toBeNull();
});
