import { expect, it } from 'vitest';
import { measure } from '../measure.ts';
import { measureLowPoint } from './low-point.ts';
import { plantedTrail, trailPicture } from './planted-trail.ts';

const setting = { view: 'face-on', hand: 'right', club: '8-iron', swingLength: 'full' } as const;
const key = 'low-point-ahead-of-ball';

it.each([-20, 0, 60, 115.5])(
  'is found within twice its doubt: planted %s mm ahead of the ball',
  (planted) => {
    const { trail, marks } = plantedTrail(planted);
    const made = measure(marks, trailPicture, setting, trail).measurements.find((one) => one.key === key);
    if (made === undefined) throw new Error('no low point');
    expect(Math.abs(made.value - planted)).toBeLessThan(2 * made.u);
    expect(made.u).toBeLessThanOrEqual(40);
    expect(made.uStatistical).toBeLessThanOrEqual(made.u);
  },
);

it('is refused in words with whatever the arc asks for', () => {
  const { trail, marks } = plantedTrail(100);
  const words = (
    given: Partial<{ trail: typeof trail; marks: typeof marks; fps: number; view: 'down-the-line' }>,
  ) => {
    const { fps = 240, view = 'face-on' } = given;
    const picture = { ...trailPicture, frameTimesS: trailPicture.frameTimesS.map((_, frame) => frame / fps) };
    const made = measureLowPoint(given.trail ?? trail, given.marks ?? marks, picture, { ...setting, view });
    return 'why' in made ? made.words : null;
  };
  expect(words({})).toBeNull();
  expect(words({ trail: [] })).toMatch(/not marked over frames/);
  expect(words({ trail: trail.slice(0, 2) })).toMatch(/fewer than three/);
  expect(words({ trail: trail.filter(({ frame }) => frame < 120) })).toMatch(
    /one side of the ball|45 cm|three/,
  );
  expect(words({ marks: marks.slice(1) })).toMatch(/ball is not marked/);
  expect(words({ fps: 60 })).toMatch(/120 frames/);
  expect(words({ fps: 100 })).toMatch(/120 frames/);
  // A phone at "120" counts 119.88 (120,000 / 1001) or, added up in binary, a hair less than 120. From memory.
  expect(words({ fps: 119.88 }) ?? '').not.toMatch(/120 frames/);
  expect(words({ fps: 119.999 }) ?? '').not.toMatch(/120 frames/);
  expect(words({ view: 'down-the-line' })).toMatch(/does not show it/);
  const outside = [{ frame: 118, x: 2000, y: 10 }, ...trail];
  expect(() => words({ trail: outside })).toThrow(RangeError);
});
