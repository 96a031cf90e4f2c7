import { propagate } from '@ballfirst/numbers/propagate';
import { describe, expect, it } from 'vitest';

const diagonal = (us: readonly number[]) => us.map((u, i) => us.map((_, j) => (i === j ? u * u : 0)));

// Source: JCGM 100:2008 (GUM), annex H.1, end gauge; lengths in nm, figures as published there.
describe('GUM H.1, end gauge', () => {
  const standardNm = 50_000_623;
  const differenceNm = 215;
  const length = ([l = 0, d = 0, alpha = 0, dAlpha = 0, theta = 0, dTheta = 0]: readonly number[]) =>
    l + d - l * (dAlpha * theta + alpha * dTheta);
  const inputs = [standardNm, differenceNm, 11.5e-6, 0, -0.1, 0];
  const doubts = [25, 9.7, 1.2e-6, 0.58e-6, 0.41, 0.029];

  it('gives 50.000838 mm with 32 nm', () => {
    const { value, u } = propagate(length, inputs, diagonal(doubts));
    expect(value).toBeCloseTo(50_000_838, 3);
    expect(Math.round(u)).toBe(32);
    // The unrounded 31.71 nm is recomputed from the same inputs.
    expect(u).toBeCloseTo(31.71, 1);
  });
});

// Source: JCGM 100:2008, annex H.2, table H.2: five simultaneous readings of V, I and phi. Data from memory; the
// published results come out of it.
describe('GUM H.2, resistance, reactance and impedance', () => {
  const volts = [5.007, 4.994, 5.005, 4.99, 4.999];
  const amperes = [19.663, 19.639, 19.64, 19.685, 19.678].map((mA) => mA / 1000);
  const radians = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
  const columns = [volts, amperes, radians];
  const mean = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0) / xs.length;
  const ofMeans = (a: readonly number[], b: readonly number[]) => {
    const products = a.map((x, i) => (x - mean(a)) * ((b[i] ?? 0) - mean(b)));
    return products.reduce((sum, x) => sum + x, 0) / (a.length * (a.length - 1));
  };
  const covariance = columns.map((a) => columns.map((b) => ofMeans(a, b)));
  const means = columns.map(mean);

  it('finds the published correlations', () => {
    const r = (i: number, j: number) =>
      (covariance[i]?.[j] ?? 0) / Math.sqrt((covariance[i]?.[i] ?? 0) * (covariance[j]?.[j] ?? 0));
    expect(r(0, 1)).toBeCloseTo(-0.36, 2);
    expect(r(0, 2)).toBeCloseTo(0.86, 2);
    expect(r(1, 2)).toBeCloseTo(-0.65, 2);
  });

  it.each([
    ['R', ([v = 0, i = 1, phi = 0]: readonly number[]) => (v / i) * Math.cos(phi), 127.732, 0.071],
    ['X', ([v = 0, i = 1, phi = 0]: readonly number[]) => (v / i) * Math.sin(phi), 219.847, 0.295],
    ['Z', ([v = 0, i = 1]: readonly number[]) => v / i, 254.26, 0.236],
  ] as const)('%s', (_, model, published, doubt) => {
    const { value, u } = propagate(model, means, covariance);
    expect(Math.abs(value - published)).toBeLessThan(0.001);
    expect(Math.abs(u - doubt)).toBeLessThan(0.001);
  });
});
