import type { PhraseValues } from './fill-phrase.ts';

/** A reading as phrases tell it. */
export type Told = { readonly key: string; readonly unit: string; readonly value: number };
export type PhraseFacts = {
  readonly player: string;
  readonly units: 'metric' | 'imperial';
  readonly club: string;
  readonly fault: string;
  /** How many of the balls had the fault; null where it was not counted. */
  readonly count: number | null;
  readonly balls: number;
  readonly cause: string | null;
  readonly drill: string | null;
  readonly readings: readonly Told[];
};

/** Every variable of a phrase but the measurements, which are called `measured:` and their key. */
export const plainVariables = ['player', 'club', 'fault', 'count', 'balls', 'cause', 'drill'] as const;

const inchMm = 25.4; // exact: international yard and pound agreement of 1959

const lengthOf = (valueMm: number, units: PhraseFacts['units']): string =>
  units === 'imperial' ? `${(valueMm / inchMm).toFixed(1)} in` : `${Math.round(valueMm / 10)} cm`;

/**
 * How much a measurement comes to in a student's words, without its sign: the words around it say which way.
 *
 * @param told - millimetres, degrees, percent or a ratio
 * @throws RangeError on a value that is no number, or an unknown unit
 * @example amountOf({ key: 'x', unit: 'mm', value: -41 }, 'metric') // '4 cm'
 */
export const amountOf = ({ key, unit, value }: Told, units: PhraseFacts['units']): string => {
  if (!Number.isFinite(value)) throw new RangeError(`"${key}" is no number.`);
  const size = Math.abs(value);
  if (unit === 'mm') return lengthOf(size, units);
  if (unit === 'deg') return `${Math.round(size)} degrees`;
  if (unit === 'percent') return `${Math.round(size)} %`;
  if (unit === 'ratio') return `${size.toFixed(1)} to 1`;
  throw new RangeError(`Nothing is measured in "${unit}".`);
};

/** What a phrase is filled with for one swing; what is not known, or comes to nothing when rounded, is left out. */
export const phraseValues = (facts: PhraseFacts): PhraseValues => {
  const { player, units, club, fault, count, balls, cause, drill, readings } = facts;
  const first = player.trim().split(/\s+/)[0] ?? player;
  const measured = readings
    .map((told) => [`measured:${told.key}`, amountOf(told, units)] as const)
    .filter(([, amount]) => !/^0(\.0)?\s/.test(amount));
  return {
    player: first,
    club,
    fault,
    ...(count !== null && count > 0 ? { count: String(count), balls: String(balls) } : {}),
    ...(cause === null ? {} : { cause }),
    ...(drill === null ? {} : { drill }),
    ...Object.fromEntries(measured),
  };
};
