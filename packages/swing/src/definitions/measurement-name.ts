import type { Unit } from '../measurement.ts';

/**
 * What a measurement is called on a screen. Signs are those of `frame.ts`; `positive` and `negative` are the words of a
 * factor, in which `{n}` takes the figure without its sign, with its doubt and unit.
 */
export type MeasurementName = {
  readonly name: string;
  readonly unit: Unit;
  readonly unitLabel: string;
  readonly positive: string;
  readonly negative: string;
};

const named =
  (unit: Unit, unitLabel: string) =>
  (name: string, positive: string, negative: string): MeasurementName => ({
    name,
    unit,
    unitLabel,
    positive,
    negative,
  });

export const mm = named('mm', 'mm');
export const percent = named('percent', '%');
export const deg = named('deg', '°');
export const ratio = named('ratio', 'to 1');
