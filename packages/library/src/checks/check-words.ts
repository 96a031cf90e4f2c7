import type { Cause, Drill } from '../types.ts';

const sides = /\b(lead|trail)\b/;

/** Sentences a student reads that say lead or trail instead of `{lead}` or `{trail}`. */
export const sidesInWords = (sentences: readonly string[]): readonly string[] =>
  sentences.filter((sentence) => sides.test(sentence.replaceAll(/\{(lead|trail)\}/g, '')));

// A letter and a number, "position 4": codes of the trade that a student cannot read. MP4 and the like do not occur here.
const codes =
  /\b[A-Z]\d{1,2}\b|\bposition \d|\b[A-Z]{2,}\b|\b[a-z]+_[a-z]+\b|\b[a-z]+-[a-z]+-[a-z]+-[a-z]+\b/;

/** Sentences with a position number, initials or the id of something. `ids`: those with a hyphen stand in no sentence. */
export const codesInWords = (sentences: readonly string[], ids: readonly string[]): readonly string[] =>
  sentences.filter((sentence) => codes.test(sentence) || ids.some((id) => sentence.includes(id)));

const body =
  /\b(hands?|arms?|wrists?|elbows?|shoulders?|hips?|pelvis|chest|spine|knees?|legs?|feet|foot|ankles?|heads?|weight)\b/i;

/** A cue speaks of the outside world, never of a part of the body. @source An, Wulf & Kim 2013; Wulf & Su 2007 (from memory) */
export const bodyInCue = (cue: string): boolean => body.test(cue);

export const wordsOfDrill = (drill: Drill): readonly string[] => [
  drill.name,
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

export const wordsOfCause = (cause: Cause): readonly string[] => [
  cause.forStudent,
  ...(cause.check === undefined ? [] : [cause.check]),
];
