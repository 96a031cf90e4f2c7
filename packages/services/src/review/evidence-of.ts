import type { Evidence } from '@ballfirst/contracts/http/review';
import type { Answer } from '@ballfirst/diagnosis/evidence';
import { nextMark } from '@ballfirst/diagnosis/next-mark';
import { type RankedCause, rank } from '@ballfirst/diagnosis/rank';
import { readAll } from '@ballfirst/diagnosis/read-all';
import { methodVersion } from '@ballfirst/diagnosis/weights';
import { causeById, causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import type { Mark, Picture, Setting } from '@ballfirst/swing/marks';
import { measure } from '@ballfirst/swing/measure';
import type { Reading } from '@ballfirst/swing/measurement';
import { isMeasurementKey, measurementNames } from '@ballfirst/swing/measurement-names';
import type { z } from 'zod';
import { refusalSentence } from './refusal-sentence.ts';

type Shown = z.input<typeof Evidence>;
export type Marked = {
  readonly marks: readonly Mark[];
  readonly observations: readonly { readonly key: string; readonly answer: Answer }[];
  readonly picture: Picture;
  readonly setting: Setting;
};

/** The readings of a clip against their bands, and why others could not be made. */
export const readingsOf = ({ marks, picture, setting }: Marked) => {
  const { measurements, refusals } = measure(marks, picture, setting);
  return { readings: readAll(measurements, setting), refusals };
};

const shownReading = (reading: Reading): Shown['readings'][number] => ({
  key: reading.key,
  name: isMeasurementKey(reading.key) ? measurementNames[reading.key].name : reading.key,
  unit: reading.unit,
  value: reading.value,
  u: reading.u,
  proxy: reading.proxy,
  band: reading.band,
  probabilityBelow: reading.probabilityBelow,
  probabilityAbove: reading.probabilityAbove,
});

/** A ranked cause as the contract says it. */
export const shownCause = (ranked: RankedCause): Shown['causes'][number] => {
  const cause = causeById(ranked.causeId);
  return {
    causeId: ranked.causeId,
    name: cause.name,
    group: cause.group,
    tick: cause.tick ?? null,
    probability: ranked.probability,
    share: ranked.share,
    score: ranked.score,
    factors: ranked.factors.map(({ sentence }) => sentence),
  };
};

/** What the marks and observations of one clip show for a fault. */
export const evidenceOf = (fault: FaultId, marked: Marked): Shown => {
  const { readings, refusals } = readingsOf(marked);
  const asked = { fault, readings, observations: marked.observations, causes };
  const next = nextMark({ ...asked, view: marked.setting.view, marked: marked.marks });
  return {
    fault,
    readings: readings.map(shownReading),
    refusals: refusals.map(({ key, why }) => ({ key, words: refusalSentence(why) })),
    causes: rank(asked).map(shownCause),
    next: next === null ? null : { kind: next.kind, position: next.position, point: next.point },
    methodVersion,
  };
};
