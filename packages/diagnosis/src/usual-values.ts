import type { Cause } from '@ballfirst/library/types';
import type { Reading } from '@ballfirst/swing/measurement';
import type { Known } from './evidence.ts';
import { type ReadSign, readSign } from './read-sign.ts';

/** A reading that is a sign of some cause, and where players stand who have none of them. */
export type UsualValue = {
  readonly key: string;
  readonly reading: Reading;
  /** Middle and spread between players, unit of the reading. */
  readonly usual: number;
  readonly sd: number;
  /** The signs that are read from it. */
  readonly signs: readonly ReadSign[];
};

const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Between where the signs of either side put a sound player; with signs of one side alone no nearer than the band's middle. */
function middleOf(signs: readonly ReadSign[], { band }: Reading): number {
  const sides = ([-1, 1] as const).map((side) =>
    signs.filter(({ towards }) => towards === side).map(({ without }) => without),
  );
  const [low, high] = sides.map((found) => (found.length === 0 ? null : meanOf(found)));
  if (low != null && high != null) return (low + high) / 2;
  const middle = band?.low != null && band.high != null ? (band.low + band.high) / 2 : null;
  if (low != null) return middle === null ? low : Math.max(low, middle);
  return middle === null ? (high ?? 0) : Math.min(high ?? middle, middle);
}

/**
 * Every reading that is a sign of any cause of the library, sorted by key.
 *
 * @throws RangeError when a reading is no number
 */
export function usualValues(library: readonly Cause[], { readings }: Known): readonly UsualValue[] {
  const byKey = new Map<string, ReadSign[]>();
  for (const { signs } of library) {
    for (const sign of signs) {
      const found = readSign(sign, readings.get(sign.key));
      if (found !== null) {
        const others = byKey.get(sign.key);
        if (others === undefined) byKey.set(sign.key, [found]);
        else others.push(found);
      }
    }
  }
  return [...byKey.keys()].sort().flatMap((key) => {
    const signs = byKey.get(key) ?? [];
    const reading = signs[0]?.reading;
    if (reading === undefined) return [];
    const sd = Math.sqrt(meanOf(signs.map((one) => one.sd ** 2)));
    return [{ key, reading, usual: middleOf(signs, reading), sd, signs }];
  });
}
