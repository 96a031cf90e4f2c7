import type { CameraView, Sign } from '../types.ts';

/** Sensitivities, specificities and spreads are starting values of the trade, to be learned over by an academy. */
export const startingValue = 'common practice, no source';

type Figures = {
  /** Absent: the edge of the band for that club and swing length. */
  readonly edge?: number;
  readonly sd: number;
  readonly sens: number;
  readonly spec: number;
  readonly shares?: string;
  readonly ratioAtMost?: number;
};

const measured =
  (view: Sign['view'], direction: NonNullable<Sign['direction']>) =>
  (key: string, { sens, spec, ...figures }: Figures): Sign => ({
    kind: 'measured',
    key,
    view,
    direction,
    sensitivity: sens,
    specificity: spec,
    source: startingValue,
    ...figures,
  });

/** Signs read from a measurement face-on: past the low edge, past the high one, or past either. */
export const below = measured('face-on', 'below');
export const above = measured('face-on', 'above');
export const outside = measured('face-on', 'outside');
/** The same, seen from behind. */
export const belowBehind = measured('down-the-line', 'below');
export const aboveBehind = measured('down-the-line', 'above');
export const outsideBehind = measured('down-the-line', 'outside');
/** Signs that both views can measure. */
export const aboveEither = measured('either', 'above');
export const belowEither = measured('either', 'below');

/** A sign that a coach taps. */
export const observed = (
  key: string,
  view: CameraView | 'either',
  sensitivity: number,
  specificity: number,
  shares?: string,
): Sign => ({
  kind: 'observed',
  key,
  view,
  sensitivity,
  specificity,
  source: startingValue,
  ...(shares === undefined ? {} : { shares }),
});
