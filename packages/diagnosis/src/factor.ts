import { observationByKey } from '@ballfirst/library/observations';
import { isMeasurementKey, measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { Reading } from '@ballfirst/swing/measurement';
import type { Evidence } from './evidence.ts';

export type Strength = 'strong sign' | 'sign' | 'weak sign' | 'says little' | 'speaks against it';

/** One sign in words, with the figures behind it. */
export type Factor = {
  readonly key: string;
  readonly strength: Strength;
  readonly logRatio: number;
  readonly sentence: string;
};

// Six to one and two to one: common practice for what is called strong and moderate, no source.
const strengthOf = (logRatio: number): Strength => {
  if (logRatio >= Math.log(6)) return 'strong sign';
  if (logRatio >= Math.log(2)) return 'sign';
  if (logRatio >= Math.log(1.25)) return 'weak sign';
  return logRatio > -Math.log(1.25) ? 'says little' : 'speaks against it';
};

/** A reading as a coach would say it: "hips 58 ± 22 mm away from the target at the top". */
export function readingInWords(reading: Reading): string {
  if (!isMeasurementKey(reading.key)) return `${reading.key} ${Math.round(reading.value)}`;
  const { positive, negative, unitLabel } = measurementNames[reading.key];
  const space = unitLabel === '°' ? '' : ' ';
  const figure = `${Math.round(Math.abs(reading.value))} ± ${Math.round(reading.u)}${space}${unitLabel}`;
  return (reading.value < 0 ? negative : positive).replace('{n}', figure);
}

/** A sign in words, its strength first; `together`: what all signs say that show the same. */
function factorOf({ sign, logRatio, reading, answer }: Evidence, together: number): Factor {
  const alone = strengthOf(logRatio);
  const strength = logRatio >= Math.log(1.25) && together > logRatio ? strengthOf(together) : alone;
  const question = observationByKey(sign.key)?.question ?? sign.key;
  const said = reading === null ? `${answer ?? 'cannot tell'}: ${question}` : readingInWords(reading);
  return { key: sign.key, strength, logRatio, sentence: `${strength}: ${said}` };
}

/**
 * The signs of one cause in words, the weightiest first. Those that show the same share what they say between them; each
 * that speaks for the cause is called as strong as they are together, as one reading in two units would be.
 *
 * @param evidence - as `countSigns` gives it: the log ratios add up
 */
export function factorsOf(evidence: readonly Evidence[]): readonly Factor[] {
  const together = new Map<string, number>();
  for (const { sign, logRatio } of evidence)
    if (sign.shares !== undefined) together.set(sign.shares, (together.get(sign.shares) ?? 0) + logRatio);
  return evidence
    .map((one) => factorOf(one, together.get(one.sign.shares ?? '') ?? one.logRatio))
    .sort((a, b) => Math.abs(b.logRatio) - Math.abs(a.logRatio));
}
