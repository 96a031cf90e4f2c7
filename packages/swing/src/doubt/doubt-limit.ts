import type { Unit } from '../measurement.ts';

/** Above this standard uncertainty a measurement says nothing a coach could use. Common practice, no source. */
const limits: Readonly<Record<Unit, number>> = { mm: 90, percent: 25, deg: 15, ratio: 1 };

/** Whether the doubt alone forbids showing a measurement; never judged by its ratio to the value. */
export function doubtTooLarge(unit: Unit, u: number): boolean {
  return !(u <= limits[unit]);
}
