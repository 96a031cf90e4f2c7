import { describe, expect, it } from 'vitest';
import type { Mark, Setting } from '../marks/marks.ts';
import { placesForKey } from '../marks/places-for-key.ts';
import { behindPicture, type PlantedBehind, plantedBehind } from '../marks/planted-behind.ts';
import { measure } from '../measure.ts';

const setting: Setting = { view: 'down-the-line', hand: 'right', club: '8-iron', swingLength: 'full' };
const key = 'toe-line-to-target-stick';
const made = (marks: readonly Mark[], change: Partial<Setting> = {}) =>
  measure(marks, behindPicture, { ...setting, ...change });
const read = (planted: Partial<PlantedBehind>, change: Partial<Setting> = {}) =>
  made(plantedBehind(planted), change).measurements.find((one) => one.key === key);
const refusal = (marks: readonly Mark[], change: Partial<Setting> = {}) =>
  made(marks, change).refusals.find((one) => one.key === key)?.words;

describe('the line of the toes against a target stick', () => {
  it.each([-8, -3, 0, 3, 8])('finds %s degrees, open above nought, for either hand', (toesOpenDeg) => {
    for (const hand of ['right', 'left'] as const) {
      const found = read({ toesOpenDeg, hand }, { hand });
      // A tenth of a degree: the focal length comes from the club, which leans in the picture.
      expect(Math.abs((found?.value ?? Number.NaN) - toesOpenDeg)).toBeLessThan(0.1);
      expect(found?.u).toBeGreaterThan(found?.uStatistical ?? 0);
      expect(found?.u).toBeLessThan(4);
    }
  });

  it('does not mind how the camera is turned, and stays within its doubt where it rolls or stands lower', () => {
    for (const yawDeg of [-8, 8]) expect(read({ toesOpenDeg: 2, yawDeg })?.value).toBeCloseTo(2, 0);
    for (const camera of [{ rollDeg: 1.5 }, { lensHeightMm: 700 }, { focalPx: 1550 }]) {
      const found = read({ toesOpenDeg: 2, ...camera });
      expect(Math.abs((found?.value ?? Number.NaN) - 2)).toBeLessThan(2 * (found?.u ?? 0));
    }
  });

  it('is refused without a stick, and in the other view', () => {
    const marks = plantedBehind();
    const without = (...gone: readonly Mark['point'][]) => marks.filter(({ point }) => !gone.includes(point));
    expect(refusal(without('target-stick'))).toBe('Target stick is not marked at address.');
    expect(refusal(without('lead-toe'))).toBe('Lead toe is not marked at address.');
    expect(refusal(marks, { view: 'face-on' })).toMatch(/does not show it/);
    const swapped = marks.map(
      (mark): Mark =>
        mark.point === 'lead-toe'
          ? { ...mark, point: 'trail-toe' }
          : mark.point === 'trail-toe'
            ? { ...mark, point: 'lead-toe' }
            : mark,
    );
    expect(refusal(swapped)).toMatch(/one end farther away/);
  });

  it('asks for the toes where the stick is marked, never for a stick that may not lie there', () => {
    const stick = [
      { position: 'address', point: 'target-stick' },
      { position: 'address', point: 'target-stick-ahead' },
    ] as const;
    expect(placesForKey(key, [], 'down-the-line')).toBeNull();
    expect(placesForKey(key, stick, 'down-the-line')?.map(({ point }) => point)).toEqual([
      ...['trail-toe', 'lead-toe'],
    ]);
    expect(placesForKey(key, stick, 'face-on')).toBeNull();
  });
});
