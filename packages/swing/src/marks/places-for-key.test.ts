import { describe, expect, it } from 'vitest';
import { definitions } from '../definitions/definitions.ts';
import { measurementKeys } from '../definitions/measurement-names.ts';
import { fatFirstPass, firstPasses } from './first-pass.ts';
import { placesForKey } from './places-for-key.ts';

describe('places for a key', () => {
  it('knows a definition for every named measurement', () => {
    const counted = new Set([
      ...definitions.map(({ key }) => key),
      'tempo-ratio',
      'low-point-ahead-of-ball',
      'toe-line-to-target-stick',
    ]);
    expect(counted).toEqual(new Set(measurementKeys));
  });

  it('asks for the marks that are missing, the scale included', () => {
    expect(placesForKey('hip-shift-address-top', [])).toEqual([
      { position: 'address', point: 'ball' },
      { position: 'address', point: 'grip-end' },
      { position: 'address', point: 'hip-middle' },
      { position: 'top', point: 'hip-middle' },
    ]);
    expect(placesForKey('hip-shift-address-top', fatFirstPass)).toEqual([]);
    expect(placesForKey('handle-ahead-of-lead-thigh', fatFirstPass)).toEqual([
      { position: 'address', point: 'lead-thigh-inside' },
    ]);
    expect(placesForKey('no-such-measurement', [])).toBeNull();
  });

  it('asks twelve marks for fat, ten for thin, and none twice', () => {
    expect(firstPasses.fat).toHaveLength(12);
    expect(firstPasses.thin).toHaveLength(10);
    for (const places of Object.values(firstPasses)) {
      expect(new Set(places.map((place) => JSON.stringify(place))).size).toBe(places.length);
    }
  });
});
