import { clothingCorrelation } from './clothing-doubt.ts';

/** An uncertain input that few coordinates share; `effect` is what 1 SD of it moves the coordinate. */
export type OwnEffect = {
  readonly name: string;
  readonly effect: number;
  readonly clicked: boolean;
  /** Inputs of one family share part of their error. */
  readonly family?: string;
};

/** A level or an upward coordinate in mm, linear in its uncertain inputs. */
export type Coordinate = {
  readonly value: number;
  /** What 1 SD of each input of the sight moves it, in the order of the sight. */
  readonly shared: Float64Array;
  readonly own: readonly OwnEffect[];
};

const ownCovariance = (a: OwnEffect, b: OwnEffect): number => {
  if (a.name === b.name) return a.effect * b.effect;
  return a.family !== undefined && a.family === b.family ? clothingCorrelation * a.effect * b.effect : 0;
};

/** Covariance of two coordinates from all that is uncertain. */
export function covarianceOf(a: Coordinate, b: Coordinate): number {
  let sum = 0;
  for (let i = 0; i < a.shared.length; i += 1) sum += (a.shared[i] ?? 0) * (b.shared[i] ?? 0);
  for (const one of a.own) for (const other of b.own) sum += ownCovariance(one, other);
  return sum;
}

/** Covariance of several coordinates, each pair computed once. */
export function covarianceMatrix(coordinates: readonly Coordinate[]): readonly (readonly number[])[] {
  const rows: number[][] = coordinates.map((a, i) => {
    const row = new Array<number>(coordinates.length).fill(0);
    for (let j = 0; j <= i; j += 1) row[j] = covarianceOf(a, coordinates[j] ?? a);
    return row;
  });
  rows.forEach((row, i) => {
    for (let j = i + 1; j < rows.length; j += 1) row[j] = rows[j]?.[i] ?? 0;
  });
  return rows;
}

/**
 * What clicking alone adds to a sum of coordinates, each with its weight: standard uncertainty.
 *
 * @param sharedClicked - which inputs of the sight are clicks
 */
export function clickedDoubt(
  coordinates: readonly Coordinate[],
  weights: readonly number[],
  sharedClicked: readonly boolean[],
): number {
  const moved = new Map<string, number>();
  coordinates.forEach(({ own }, i) => {
    for (const { name, effect, clicked } of own)
      if (clicked) moved.set(name, (moved.get(name) ?? 0) + (weights[i] ?? 0) * effect);
  });
  let variance = 0;
  for (const sum of moved.values()) variance += sum * sum;
  sharedClicked.forEach((clicked, j) => {
    if (!clicked) return;
    let sum = 0;
    coordinates.forEach(({ shared }, i) => {
      sum += (weights[i] ?? 0) * (shared[j] ?? 0);
    });
    variance += sum * sum;
  });
  return Math.sqrt(variance);
}
