import { wayOf } from '@ballfirst/library/phrases/ways';
import { amountOf, doubtOf, type StudentUnits, type Told } from './amount-of.ts';
import { bandWords } from './band-words.ts';
import type { PhraseValues } from './fill-phrase.ts';

export type PhraseFacts = {
  readonly player: string;
  readonly units: StudentUnits;
  readonly club: string;
  readonly fault: string;
  /** How many of the balls had the fault; null where it was not counted. */
  readonly count: number | null;
  readonly balls: number;
  readonly cause: string | null;
  readonly drill: string | null;
  readonly readings: readonly Told[];
  /** How often the set meets the ground first, 0..1, and how far forward the low point belongs; null: not told. */
  readonly ground: { readonly fat: number; readonly forwardMm: number } | null;
};

/** Less than this is nothing a student could aim at, mm. Common practice, no source. */
const leastForwardMm = 10;

/** What is told of where the ground is met; nothing where the low point is well placed, or nobody knows. */
const groundOf = (ground: PhraseFacts['ground'], units: StudentUnits): PhraseValues => {
  if (ground === null || ground.forwardMm < leastForwardMm) return {};
  const often = Math.min(9, Math.max(1, Math.round(10 * ground.fat)));
  return {
    often: `${often} in 10`,
    forward: amountOf({ key: 'forward', unit: 'mm', value: ground.forwardMm }, units),
  };
};

/** What is told of one reading; where it comes to nothing when rounded, only its band. */
const valuesOf = (told: Told, units: StudentUnits): PhraseValues => {
  const { key, value } = told;
  const amount = amountOf(told, units);
  const nothing = /^0(\.0)?\s/.test(amount);
  const doubt = doubtOf(told, units);
  const way = wayOf(key);
  const band = bandWords(told, units);
  return {
    ...(band === null ? {} : { [`band:${key}`]: band }),
    ...(nothing ? {} : { [`measured:${key}`]: amount }),
    ...(nothing || doubt === null ? {} : { [`doubted:${key}`]: `${amount} (give or take ${doubt})` }),
    ...(way === undefined ? {} : { [`way:${key}`]: value < 0 ? way.negative : way.positive }),
  };
};

/** What a phrase is filled with for one swing; what is not known, or comes to nothing when rounded, is left out. */
export const phraseValues = (facts: PhraseFacts): PhraseValues => {
  const { player, units, club, fault, count, balls, cause, drill, readings, ground } = facts;
  const first = player.trim().split(/\s+/)[0] ?? player;
  return {
    player: first,
    club,
    fault,
    ...(count !== null && count > 0 ? { count: String(count), balls: String(balls) } : {}),
    ...(cause === null ? {} : { cause }),
    ...(drill === null ? {} : { drill }),
    ...groundOf(ground, units),
    ...Object.fromEntries(readings.flatMap((told) => Object.entries(valuesOf(told, units)))),
  };
};
