import { observationByKey } from '@ballfirst/library/observations';
import type { Reading } from '@ballfirst/swing/measurement';
import { isMeasurementKey, measurementNames } from '@ballfirst/swing/measurement-names';
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

/** A sign in words, its strength first. */
export function factorOf({ sign, logRatio, reading, answer }: Evidence): Factor {
  const strength = strengthOf(logRatio);
  const question = observationByKey(sign.key)?.question ?? sign.key;
  const said = reading === null ? `${answer ?? 'cannot tell'}: ${question}` : readingInWords(reading);
  return { key: sign.key, strength, logRatio, sentence: `${strength}: ${said}` };
}
