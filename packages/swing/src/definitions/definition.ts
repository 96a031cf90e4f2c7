import type { Point, Position, View } from '../marks/marks.ts';
import type { Place } from '../marks/place.ts';
import type { FormulaName } from './formulas.ts';
import type { MeasurementKey } from './measurement-names.ts';

/** How a measurement is made. Where a key has several definitions in a view, the first with all its marks counts. */
export type Definition = {
  readonly key: MeasurementKey;
  readonly view: View;
  readonly formula: FormulaName;
  /** The places that the formula reads, in its order. */
  readonly places: readonly Place[];
  /** Those and the ankles, where a share of their distance is told; not what gives the scale. */
  readonly needed: readonly Place[];
  readonly positions: readonly Position[];
  /** Counted against the arrow of the frame. */
  readonly backwards: boolean;
  /** In percent of the distance between the ankles at address. */
  readonly perAnkles: boolean;
  /** A known shift with its doubt, in the unit of the measurement; the shift is added after the sign is turned. */
  readonly offset: { readonly value: number; readonly u: number };
  /** A shaft that turns while the picture is read row by row: of two places, the first stands over the second. */
  readonly bentByShutter: boolean;
  /** A 2-D picture shows it only indirectly. */
  readonly proxy: boolean;
};

export type PlaceText = `${Position}/${Point}`;

const place = (text: PlaceText): Place => {
  const [position, point] = text.split('/') as [Position, Point];
  return { position, point };
};

export const ankles = { lead: place('address/lead-ankle'), trail: place('address/trail-ankle') };

export type Extra = Partial<
  Pick<Definition, 'backwards' | 'perAnkles' | 'offset' | 'bentByShutter' | 'proxy'>
>;

const plain = {
  backwards: false,
  perAnkles: false,
  offset: { value: 0, u: 0 },
  bentByShutter: false,
  proxy: false,
};

/** Definitions of one view, each in a line: `define('head-behind-ball', 'apart', ['address/head-centre', 'address/ball'], …)`. */
export const definerFor =
  (view: View) =>
  (key: MeasurementKey, formula: FormulaName, texts: readonly PlaceText[], extra: Extra = {}): Definition => {
    const places = texts.map(place);
    const needed = extra.perAnkles ? [...places, ankles.lead, ankles.trail] : places;
    const positions = [...new Set(needed.map(({ position }) => position))];
    return { key, view, formula, places, needed, positions, ...plain, ...extra };
  };
