import { describe, expect, it } from 'vitest';
import { seeSpot } from '../camera/see-spot.ts';
import { usualStick } from '../camera/stick-tilt.ts';
import type { Hand, Mark, Picture, Setting } from '../marks/marks.ts';
import { estimateArc } from './arc-estimate.ts';
import { arcPriors, usualPlane } from './arc-question.ts';
import { type ClubheadPixel, clubheadTrack } from './clubhead-track.ts';

const picture: Picture = {
  widthPx: 1080,
  heightPx: 1920,
  frameTimesS: Array.from({ length: 240 }, (_, frame) => frame / 240),
};
const camera = { distanceMm: 3900, lensHeightMm: 1000, yawDeg: 0, rollDeg: 1.5, focalPx: 1400 };
const plane = (61.5 * Math.PI) / 180;
const [radius, lowPoint] = [1300, 95];

const pixel = (hand: Hand, spot: readonly [number, number, number]) => {
  const { levelPx, upPx } = seeSpot(spot, camera);
  return { x: 540 + (hand === 'right' ? levelPx : -levelPx), y: 960 - upPx };
};
/** A circle in a tilted plane, seen by a rolled phone: ball on frame 120.3. */
const swing = (hand: Hand) => {
  const heel = Math.sqrt(radius ** 2 - lowPoint ** 2);
  const pixels: ClubheadPixel[] = [];
  for (let frame = 116; frame <= 124; frame += 1) {
    const since = (frame - 120.3) / 240;
    const psi = -Math.asin(lowPoint / radius) + (39_000 / radius) * since * (since < 0 ? 1 : 0.82);
    const rise = heel - radius * Math.cos(psi);
    const spot = [
      lowPoint + radius * Math.sin(psi),
      21.3 + rise * Math.sin(plane),
      rise * Math.cos(plane),
    ] as const;
    if (Math.abs(spot[0]) < 600) pixels.push({ frame, ...pixel(hand, spot) });
  }
  const mark = (point: Mark['point'], spot: readonly [number, number, number]): Mark => ({
    position: 'address',
    point,
    frame: 0,
    source: 'coach',
    ...pixel(hand, spot),
  });
  const half = usualStick.lengthMm / 2;
  const marks = [
    mark('ball', [0, 21.3, 0]),
    mark('target-stick', [-half, 0, 0]),
    mark('target-stick-ahead', [half, 0, 0]),
  ];
  return { pixels, marks };
};
const setting = (hand: Hand): Setting => ({ view: 'face-on', hand, club: '8-iron', swingLength: 'full' });
const rest = { blurMm: 10, camera, planeDeg: usualPlane('8-iron'), priors: arcPriors('8-iron') };

describe('the clubhead near the ball', () => {
  it.each(['right', 'left'] as const)('from pixels to the low point, %s-handed', (hand) => {
    const { pixels, marks } = swing(hand);
    const track = clubheadTrack(pixels.toReversed(), marks, picture, setting(hand));
    expect(track.framesPerSecond).toBeCloseTo(240, 6);
    const arc = estimateArc({ ...track, ...rest });
    if ('why' in arc) throw new Error(arc.words);
    expect(Math.abs(arc.lowPointAheadMm.value - lowPoint)).toBeLessThan(arc.lowPointAheadMm.u);
    expect(arc.lowPointAheadMm.u).toBeLessThan(40);
  });

  it('has no tilt without the stick, and refuses what is missing by name', () => {
    const { pixels, marks } = swing('right');
    const ask = (given: readonly Mark[]) => () => clubheadTrack(pixels, given, picture, setting('right'));
    expect(ask(marks.slice(1))).toThrow(/ball is not marked at address/);
    expect(ask(marks.slice(0, 2))).toThrow(/No scale/);
    const grip = { ...marks[0], point: 'grip-end', y: 700 } as Mark;
    const track = ask([...marks.slice(0, 1), grip])();
    expect(track.tilt).toBeNull();
    const arc = estimateArc({ ...track, ...rest });
    expect('why' in arc && arc.why).toBe('no-stick');
    const behind = () =>
      clubheadTrack(pixels, marks, picture, { ...setting('right'), view: 'down-the-line' });
    expect(behind).toThrow(/face-on/);
  });
});
