import type { Point, Position } from './marks.ts';
import type { MeasurementKey } from './measurement-names.ts';
import type { Place } from './place.ts';

/**
 * How a measurement is made: `of` seen from `from` on one axis. `along` and `up` are in mm, `lean` is the angle from the
 * vertical in degrees, + towards the target. Where a key has several definitions, the first with all its marks counts.
 */
export type Definition = {
  readonly key: MeasurementKey;
  readonly axis: 'along' | 'up' | 'lean';
  readonly of: Place;
  readonly from: Place;
  /** Counted away from the target instead of towards it. */
  readonly backwards?: boolean;
  /** In percent of the distance between the ankles at address. */
  readonly perAnkles?: boolean;
  /** A known shift with its doubt, in the unit of the measurement. */
  readonly offset?: { readonly value: number; readonly u: number };
  readonly proxy: boolean;
};

const place = (text: `${Position}/${Point}`): Place => {
  const [position, point] = text.split('/') as [Position, Point];
  return { position, point };
};

type Extra = Partial<Pick<Definition, 'backwards' | 'perAnkles' | 'offset' | 'proxy'>>;

/** A definition in one line: `define('head-behind-ball', 'along', 'address/head-centre', 'address/ball', …)`. */
export const define = (
  key: MeasurementKey,
  axis: Definition['axis'],
  of: `${Position}/${Point}`,
  from: `${Position}/${Point}`,
  extra: Extra = {},
): Definition => ({ key, axis, of: place(of), from: place(from), proxy: false, ...extra });
