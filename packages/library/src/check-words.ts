import type { Cause, Drill } from './types.ts';

const sides = /\b(lead|trail)\b/;

/** Sentences a student reads that say lead or trail instead of `{lead}` or `{trail}`. */
export const sidesInWords = (sentences: readonly string[]): readonly string[] =>
  sentences.filter((sentence) => sides.test(sentence.replaceAll(/\{(lead|trail)\}/g, '')));

export const wordsOfDrill = (drill: Drill): readonly string[] => [
  drill.purpose,
  drill.feel,
  drill.overCorrection,
  drill.dose,
  ...drill.steps,
  ...drill.cautions,
  ...drill.ladder.map((rung) => rung.clean),
  ...drill.exaggerations.flatMap(({ how, setting }) => [how, setting]),
  ...drill.stations.flatMap((station) => [
    ...station.steps,
    ...station.objects.map((object) => object.label),
  ]),
];

export const wordsOfCause = (cause: Cause): readonly string[] => [cause.forStudent];
