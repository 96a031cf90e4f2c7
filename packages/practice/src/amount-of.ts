/** The units a student reads. */
export type StudentUnits = 'metric' | 'imperial';
/** A reading as phrases tell it: `u` is its doubt (1 SD), `band` what it is read against; both may be unknown. */
export type Told = {
  readonly key: string;
  readonly unit: string;
  readonly value: number;
  readonly u?: number;
  readonly band?: { readonly low: number | null; readonly high: number | null } | null;
};

const inchMm = 25.4; // exact: international yard and pound agreement of 1959

const lengthOf = (valueMm: number, units: StudentUnits): string =>
  units === 'imperial' ? `${(valueMm / inchMm).toFixed(1)} in` : `${Math.round(valueMm / 10)} cm`;

const degrees = (size: number): string => `${size} ${size === 1 ? 'degree' : 'degrees'}`;

/**
 * How much a measurement comes to in a student's words, without its sign: the words around it say which way.
 *
 * @param told - millimetres, degrees, percent or a ratio
 * @throws RangeError on a value that is no number, or an unknown unit
 * @example amountOf({ key: 'x', unit: 'mm', value: -41 }, 'metric') // '4 cm'
 */
export const amountOf = ({ key, unit, value }: Told, units: StudentUnits): string => {
  if (!Number.isFinite(value)) throw new RangeError(`"${key}" is no number.`);
  const size = Math.abs(value);
  if (unit === 'mm') return lengthOf(size, units);
  if (unit === 'deg') return degrees(Math.round(size));
  if (unit === 'percent') return `${Math.round(size)} %`;
  if (unit === 'ratio') return `${size.toFixed(1)} to 1`;
  throw new RangeError(`Nothing is measured in "${unit}".`);
};

/** The smallest doubt that is told: half a centimetre, a tenth of an inch, a degree. Nothing is known to nought. */
const leastDoubt: Readonly<Record<string, number>> = { deg: 1, percent: 1, ratio: 0.1 };

/** A doubt (1 SD) in words, never nought; null for one that is unknown. @throws RangeError as `amountOf` */
export const doubtOf = (told: Told, units: StudentUnits): string | null => {
  const { unit, u } = told;
  if (u === undefined || !Number.isFinite(u) || u < 0) return null;
  if (unit === 'mm' && units === 'metric' && u < 5) return 'half a cm';
  const least = unit === 'mm' ? inchMm / 10 : (leastDoubt[unit] ?? 0);
  const amount = amountOf({ ...told, value: Math.max(least, u) }, units);
  return unit === 'ratio' ? amount.replace(' to 1', '') : amount;
};
