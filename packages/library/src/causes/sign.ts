import type { Sign } from '../types.ts';

/** Sensitivities, specificities and spreads are starting values of the trade, to be learned over by an academy. */
export const startingValue = 'common practice, no source';

type Measured = {
  readonly key: string;
  readonly direction: 'above' | 'below';
  readonly edge?: number;
  readonly sd: number;
  readonly sensitivity: number;
  readonly specificity: number;
  readonly shares?: string;
  readonly view?: 'face-on' | 'down-the-line';
};

/** A sign read from a measurement of the face-on view unless said otherwise. */
export const measured = (sign: Measured): Sign => ({
  kind: 'measured',
  view: 'face-on',
  source: startingValue,
  ...sign,
});

/** A sign that a coach taps. */
export const observed = (
  key: string,
  view: Sign['view'],
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
