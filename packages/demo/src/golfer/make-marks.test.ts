import { describe, expect, it } from 'vitest';
import { drawShot } from './draw-swing.ts';
import { makeMarks } from './make-marks.ts';
import type { GolferPoint } from './points.ts';

const shot = drawShot(21, { view: 'face-on' });
const place = (point: GolferPoint) => ({ position: 'address' as const, point });
const errors = (point: GolferPoint, noise: Parameters<typeof makeMarks>[3]) =>
  Array.from({ length: 3000 }, (_, seed) => {
    const [mark] = makeMarks(shot, [place(point)], seed, noise);
    return (mark?.x ?? Number.NaN) - shot.truth.points.address[point][0];
  });
const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const sdOf = (values: readonly number[]) => {
  const mean = meanOf(values);
  return Math.sqrt(meanOf(values.map((value) => (value - mean) ** 2)));
};

describe('the marks of a coach', () => {
  it('without noise are where the points are', () => {
    const marks = makeMarks(shot, [place('ball'), place('hip-middle')], 1, { clicks: 0, clothingMm: {} });
    expect(marks.map(({ x, y }) => [x, y])).toEqual([
      shot.truth.points.address.ball,
      shot.truth.points.address['hip-middle'],
    ]);
  });

  it('spread by s sqrt(.9 + .1 9) about a bias that is the coach’s own (mixture of two normals)', () => {
    const spread = errors('grip-end', { coachSeed: 4 });
    // s is 3 pixels at 1080: 3 sqrt(1.8) = 4.02.
    expect(sdOf(spread)).toBeGreaterThan(3.8);
    expect(sdOf(spread)).toBeLessThan(4.25);
    expect(Math.abs(meanOf(spread) - meanOf(errors('grip-end', { coachSeed: 5 })))).toBeGreaterThan(0.2);
  });

  it('carry what clothing hides on top of the clicks', () => {
    const bare = sdOf(errors('hip-middle', { clicks: 0, clothingMm: {} }));
    const worn = sdOf(errors('hip-middle', { clicks: 0 }));
    expect(bare).toBeCloseTo(0, 6);
    // 17 mm where the hips are, in pixels of this picture.
    expect(worn).toBeGreaterThan(3);
  });

  it('are the same for the same seed', () => {
    const places = [place('ball'), place('head-centre')];
    expect(makeMarks(shot, places, 8)).toEqual(makeMarks(shot, places, 8));
  });
});
