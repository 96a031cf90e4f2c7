import { causeById, causes } from '@ballfirst/library/causes';
import { unseenIn } from '@ballfirst/library/checks/unseen-in';
import type { CauseGroup, FaultId, SetUpTick } from '@ballfirst/library/types';
import type { ClubheadPixel } from '@ballfirst/swing/arc/clubhead-track';
import type { FatRisk } from '@ballfirst/swing/arc/fat-risk-of-set';
import type { ArcNotRead, ArcReading } from '@ballfirst/swing/arc/read-arc';
import { isMeasurementKey, measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { Mark, Picture, Setting, View } from '@ballfirst/swing/marks/marks';
import { measure } from '@ballfirst/swing/measure';
import type { Reading, Refusal } from '@ballfirst/swing/measurement';
import type { ObservationAnswer } from './evidence.ts';
import { fatRiskWith, type StudentSet } from './fat-risk-with.ts';
import { firstCause } from './first-cause.ts';
import { type NextMark, nextMark } from './next-mark.ts';
import { type RankedCause, rank } from './rank.ts';
import { readAll } from './read-all.ts';
import { methodVersion } from './weights.ts';

/** All that is marked and seen on one clip, and how it was filmed. */
export type Marked = {
  readonly marks: readonly Mark[];
  /** The clubhead over frames near the ball; absent: none. Then the picture needs the true times of its frames. */
  readonly trail?: readonly ClubheadPixel[];
  readonly observations: readonly ObservationAnswer[];
  readonly picture: Picture;
  readonly setting: Setting;
  /** What is known of the student's set with this club; absent: this clip stands alone. */
  readonly set?: StudentSet | null;
  /** This clip among the swings of the set. */
  readonly clipId?: string;
};

export type ShownReading = Pick<
  Reading,
  'key' | 'unit' | 'value' | 'u' | 'proxy' | 'band' | 'probabilityBelow' | 'probabilityAbove'
> & { readonly name: string };
export type ShownCause = Pick<RankedCause, 'causeId' | 'probability' | 'share' | 'score'> & {
  readonly name: string;
  readonly group: CauseGroup;
  readonly tick: SetUpTick | null;
  readonly factors: string[];
  /** Why this view cannot show it; null: it can. */
  readonly unseen: string | null;
};
/** What a coach is shown: plain data in words and figures, the same on the server and in the browser. */
export type SwingEvidence = {
  readonly fault: FaultId;
  readonly readings: ShownReading[];
  readonly refusals: { readonly key: string; readonly words: string }[];
  readonly causes: ShownCause[];
  /** The cause to fix first, by id; null: nothing stands out. */
  readonly first: string | null;
  readonly next: Pick<NextMark, 'kind' | 'position' | 'point'> | null;
  /** How often the set meets the ground behind the ball; null where the clubhead is not marked over frames. */
  readonly fatRisk: FatRisk | null;
  readonly methodVersion: string;
};

/**
 * The same evidence with its order of causes held back: nothing that tells which comes first, nor what could change it.
 * Readings and what could not be measured stay.
 */
export const withoutOrder = (evidence: SwingEvidence): SwingEvidence => ({
  ...evidence,
  ...{ causes: [], first: null, next: null },
});

/**
 * The readings of a clip against their bands, and why others could not be made.
 *
 * @throws MarkOutsideError (a RangeError) when a mark or its frame lies outside
 */
export function readingsOf({ marks, trail = [], picture, setting }: Marked): {
  readonly readings: readonly Reading[];
  readonly refusals: readonly Refusal[];
  readonly arc: ArcReading | ArcNotRead;
} {
  const { measurements, refusals, arc } = measure(marks, picture, setting, trail);
  return { readings: readAll(measurements, setting), refusals, arc };
}

const shownReading = (reading: Reading): ShownReading => ({
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

const shownCause = (ranked: RankedCause, view: View): ShownCause => {
  const { causeId, probability, share, score, factors } = ranked;
  const cause = causeById(causeId);
  const { name, group, tick = null } = cause;
  return {
    causeId,
    name,
    group,
    tick,
    probability,
    share,
    score,
    factors: factors.map(({ sentence }) => sentence),
    unseen: unseenIn(cause, view),
  };
};

/**
 * What the marks and observations of one clip show for a fault: readings, ranked causes, what to mark next.
 *
 * @param fault - the miss the swing is read for
 * @param baseRates - an academy's own by cause id, strictly between 0 and 1; a cause without one has the library's
 * @throws MarkOutsideError (a RangeError) when a mark or its frame lies outside
 * @example evidenceOf('fat', { marks, observations: [], picture, setting }).causes[0]?.factors
 */
export function evidenceOf(
  fault: FaultId,
  marked: Marked,
  baseRates: Readonly<Record<string, number>> = {},
): SwingEvidence {
  const { readings, refusals, arc } = readingsOf(marked);
  const asked = { fault, readings, observations: marked.observations, causes, baseRates };
  const next = nextMark({ ...asked, view: marked.setting.view, marked: marked.marks });
  const ranked = rank(asked);
  return {
    fault,
    readings: readings.map(shownReading),
    refusals: refusals.map(({ key, words }) => ({ key, words })),
    causes: ranked.map((one) => shownCause(one, marked.setting.view)),
    first: firstCause(ranked)?.causeId ?? null,
    next: next === null ? null : { kind: next.kind, position: next.position, point: next.point },
    fatRisk: fatRiskWith(arc, marked),
    methodVersion,
  };
}
