import { homography, throughHomography } from '@ballfirst/numbers/homography';
import { linearRegression } from '@ballfirst/numbers/linear-regression';
import { parabolaFit } from '@ballfirst/numbers/parabola-fit';
import { describe, expect, it } from 'vitest';
import { norris } from './data/norris.ts';

describe('linear regression', () => {
  // Source: NIST StRD Norris, certified values; nine significant digits are asked for.
  it.each(Object.entries(norris.certified))('Norris, %s', (name, certified) => {
    const line = linearRegression(norris.x, norris.y);
    expect(line[name as keyof typeof norris.certified] / certified).toBeCloseTo(1, 9);
  });

  it('refuses what has no line', () => {
    expect(() => linearRegression([1, 1, 1], [1, 2, 3])).toThrow(/same/);
    expect(() => linearRegression([1, 2, 3], [1, 2])).toThrow(RangeError);
    expect(() => linearRegression([1, 2, Number.POSITIVE_INFINITY], [1, 2, 3])).toThrow(/Infinity/);
  });
});

describe('parabola', () => {
  // Source: closed form; a parabola that the points lie on comes back whatever the place of the points.
  it('comes back from its own points', () => {
    const x = [1000, 1010, 1025, 1030, 1050];
    const fit = parabolaFit(
      x,
      x.map((at) => 0.004 * at * at - 7 * at + 20),
    );
    expect(fit.a).toBeCloseTo(0.004, 9);
    expect(fit.b).toBeCloseTo(-7, 6);
    expect(fit.residualSd).toBeLessThan(1e-8);
    expect(() => parabolaFit([1, 1, 2], [0, 1, 2])).toThrow(/three different/);
  });
});

describe('homography', () => {
  const square = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  const seen = [
    [100, 400],
    [500, 380],
    [460, 120],
    [140, 140],
  ] as const;

  // Source: derived apart; the middle of the square lies where the diagonals of the picture cross.
  it('carries the unit square to four corners', () => {
    const h = homography(square, seen);
    const derived = [
      [390.47619, 74.66667, 100],
      [-27.238095, -225.33333, 400],
      [-0.01904762, 0.24761905, 1],
    ];
    derived.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(h[i]?.[j]).toBeCloseTo(value, 5);
      });
    });
    const [x, y] = throughHomography(h, [0.5, 0.5]);
    expect(x).toBeCloseTo(298.46154, 5);
    expect(y).toBeCloseTo(245.64103, 5);
  });

  it('refuses three points on a line, coincident ones, and infinity', () => {
    const line = [
      [0, 0],
      [1, 0],
      [2, 0],
      [0, 1],
    ] as const;
    expect(() => homography(line, seen)).toThrow(/one line/);
    expect(() => homography(square, [seen[0], seen[0], seen[2], seen[3]])).toThrow(/one line/);
    expect(() =>
      throughHomography(
        [
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 0],
        ],
        [1, 1],
      ),
    ).toThrow(/infinity/);
  });
});
