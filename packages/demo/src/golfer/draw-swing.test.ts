import { seededRandom } from '@ballfirst/numbers/seeded-random';
import { describe, expect, it } from 'vitest';
import { drawShape } from './draw-shape.ts';
import { drawShot, drawSwing, faultOfCause, viewOfCause } from './draw-swing.ts';
import { causeKnobs, golferCauses, opposed, type PlantedCause } from './golfer-causes.ts';
import { traits } from './traits.ts';

const planted = golferCauses.filter((cause): cause is PlantedCause => cause !== 'none');
const seeds = Array.from({ length: 12 }, (_, i) => 100 + 17 * i);

/** The measurement in which each cause must show, and the edge of common practice that it passes; no source. */
const shows: Readonly<Record<PlantedCause, readonly (readonly [key: string, side: 1 | -1, edge: number])[]>> =
  {
    'handle-back': [['handle-ahead-of-lead-thigh', -1, -30]],
    'hips-back-at-address': [['hip-middle-along-ankles', -1, 50]],
    'sway-away': [['hip-shift-address-top', -1, -30]],
    'hang-back': [
      ['hip-shift-top-lead-arm-down', -1, 30],
      ['head-shift-top-lead-arm-down', -1, 0],
      ['hip-past-ball-at-finish', -1, 0],
      ['hip-shift-address-impact', -1, 30],
    ],
    'thrown-early': [['grip-end-to-ball-line-at-shaft-parallel-down', -1, -100]],
    flip: [['shaft-lean-at-impact', -1, 2]],
    dip: [['neck-base-height-address-impact', -1, -25]],
    lift: [['neck-base-height-address-impact', 1, 30]],
    'reverse-tilt': [['trunk-lean-at-top', 1, 5]],
    'upper-body-lunge': [['head-shift-address-impact', 1, 30]],
    'ball-too-far-forward': [['ball-inside-lead-heel', -1, 80]],
    'ball-too-far-back': [['ball-inside-lead-heel', 1, 130]],
    'hips-toward-ball': [
      ['seat-toward-ball-address-impact', 1, 30],
      ['loss-of-trunk-bend-address-impact', 1, 8],
    ],
    'out-to-in': [
      ['shaft-steeper-at-lead-arm-down', 1, 5],
      ['hands-above-address-shaft-at-lead-arm-down', 1, 130],
      ['clubhead-outside-hands-at-shaft-parallel-down', 1, 50],
    ],
    'in-to-out': [
      ['clubhead-outside-hands-at-shaft-parallel-down', -1, -50],
      ['shaft-steeper-at-lead-arm-down', -1, -5],
    ],
    'slide-without-turn': [['hip-shift-address-impact', 1, 120]],
    'too-close-upright': [
      ['hands-to-thighs-at-address', -1, 100],
      ['trunk-bend-at-address', -1, 30],
    ],
  };

describe('golfers by chance', () => {
  it('the same seed gives the same shot, another seed another', () => {
    const one = drawShot(5, { view: 'face-on', causes: ['dip'] });
    const again = drawShot(5, { view: 'face-on', causes: ['dip'] });
    expect(again.truth).toEqual(one.truth);
    expect(again.camera).toEqual(one.camera);
    expect(drawShot(6, { view: 'face-on', causes: ['dip'] }).truth.measures).not.toEqual(one.truth.measures);
  });

  it.each(planted)('%s: is past its band in at least one of its measurements', (cause) => {
    for (const seed of seeds) {
      const { measures } = drawShot(seed, { view: viewOfCause(cause), causes: [cause], fps: 240 }).truth;
      const past = shows[cause].some(
        ([key, side, edge]) => side * ((measures[key] ?? Number.NaN) - edge) > 0,
      );
      expect(past, `${cause} ${seed}`).toBe(true);
      expect(faultOfCause(cause)).not.toBe('solid');
    }
  });

  it('a sound golfer stays within 2.2 SD of every trait, and is not past any band by more than chance', () => {
    let past = 0;
    for (const seed of seeds) {
      const { swing, truth } = drawShot(seed, { view: 'face-on' });
      for (const [name, { mean, sd }] of Object.entries(traits)) {
        const value = swing.shape[name as keyof typeof traits];
        expect(Math.abs(value - mean)).toBeLessThanOrEqual(2.2 * sd + 1e-9);
      }
      for (const cause of planted.filter((one) => viewOfCause(one) === 'face-on')) {
        if (shows[cause].every(([key, side, edge]) => side * ((truth.measures[key] ?? 0) - edge) > 0))
          past += 1;
      }
    }
    expect(past / (seeds.length * planted.length)).toBeLessThan(0.05);
  });

  it('signs that need not show are absent at about the rate 1 - sensitivity', () => {
    const [, head] = causeKnobs['hang-back'].departures;
    const n = 2000;
    const random = seededRandom(1);
    let seen = 0;
    for (let i = 0; i < n; i += 1) {
      if (drawShape(random, ['hang-back']).neckFromTopMm < (head?.edge ?? 0)) seen += 1;
    }
    // Three binomial SD of .6 are .033; one sign at least must show, which adds .006.
    expect(seen / n).toBeGreaterThan(0.6 - 0.033);
    expect(seen / n).toBeLessThan(0.606 + 0.033);
  });

  it('plants two causes at once, but not two that one body cannot do', () => {
    const swing = drawSwing(3, { causes: ['sway-away', 'flip'], hand: 'left' });
    expect(swing.causes).toEqual(['sway-away', 'flip']);
    expect(swing.shape.hipToTopMm).toBeLessThan(0);
    expect(opposed('dip', 'lift')).toBe(true);
    expect(() => drawSwing(3, { causes: ['lift', 'dip'] })).toThrow(RangeError);
  });

  it('swings at a tempo near three to one (Grober & Cholewicki 2006; number from memory)', () => {
    const ratios = seeds.map(
      (seed) => drawShot(seed, { view: 'face-on' }).truth.measures['tempo-ratio'] ?? 0,
    );
    const mean = ratios.reduce((a, b) => a + b, 0) / ratios.length;
    expect(mean).toBeGreaterThan(2.7);
    expect(mean).toBeLessThan(3.2);
  });
});
