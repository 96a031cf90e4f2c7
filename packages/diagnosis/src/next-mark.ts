import type { Sign } from '@ballfirst/library/types';
import { observedSignLogRatio } from '@ballfirst/numbers/observed-sign';
import type { Position, View } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import { placesForKey } from '@ballfirst/swing/marks/places-for-key';
import { combineSigns } from './combine-signs.ts';
import { type Evidence, known } from './evidence.ts';
import { loudness } from './loudness.ts';
import type { RankInput } from './rank.ts';
import { scoreCauses, type WeighedCause } from './score-causes.ts';
import { shownBy } from './shown.ts';
import { signEvidence } from './sign-evidence.ts';
import { standsOut } from './stands-out.ts';

/** What to look at next. For an observation `point` is its key. */
export type NextMark = {
  readonly kind: 'mark' | 'observation';
  readonly position: Position | null;
  readonly point: string;
  /** Expected gain in score of the cause that would then be fixed first. */
  readonly gain: number;
};

export type NextMarkInput = RankInput & { readonly view: View; readonly marked: readonly Place[] };

type Seen = WeighedCause & { readonly evidence: readonly Evidence[] };
type Standing = {
  readonly causeId: string;
  readonly score: number;
  readonly loud: number;
  readonly out: boolean;
};

const before = (one: Standing, other: Standing): boolean =>
  one.loud === other.loud ? one.score > other.score : one.loud > other.loud;
/** What would be fixed first: the loudest that stands out, by its score among those as loud; null: nothing. */
const decide = (standings: readonly Standing[]): Standing | null =>
  standings.reduce<Standing | null>(
    (lead, one) => (one.out && (lead === null || before(one, lead)) ? one : lead),
    null,
  );

/** What a cause would be worth if `present`, of its signs with this key, were there and the others not. */
const supposed = (one: Seen, key: string, present: Sign | null): WeighedCause => {
  const asked = one.cause.signs.filter((sign) => sign.key === key);
  if (asked.length === 0) return one;
  const added = asked.map((sign): Evidence => {
    const logRatio = observedSignLogRatio(sign === present, sign.sensitivity, sign.specificity);
    return { sign, logRatio, weight: 1, reading: null, answer: null };
  });
  return { cause: one.cause, logRatio: combineSigns([...one.evidence, ...added]) };
};

/**
 * The mark or observation with the largest expected gain, each still unknown sign taken as one yes-or-no question.
 *
 * @returns null when no single one of them can change which cause is fixed first, or that none is: enough
 * @source expected value of sample information (Raiffa & Schlaifer 1961), one question ahead
 */
export function nextMark(input: NextMarkInput): NextMark | null {
  const { fault, causes, baseRates, view, marked } = input;
  const seen = known(input.readings, input.observations);
  const shown = shownBy(causes, seen);
  const all: Seen[] = causes
    .filter((cause) => cause.brings[fault] !== undefined)
    .map((cause) => {
      const evidence = signEvidence(cause, shown, seen);
      return { cause, evidence, logRatio: combineSigns(evidence) };
    });
  const standings = (weighed: readonly WeighedCause[]): Standing[] =>
    scoreCauses(fault, weighed, baseRates).map(({ causeId, score, probability }, i) => {
      const logRatio = weighed[i]?.logRatio ?? 0;
      return { causeId, score, loud: loudness(logRatio), out: standsOut({ probability, logRatio }) };
    });
  const now = scoreCauses(fault, all, baseRates);
  const first = decide(standings(all));
  const gainOf = (weighed: readonly WeighedCause[]): number => {
    const then = standings(weighed);
    const kept = then.find(({ causeId }) => causeId === first?.causeId)?.score ?? 0;
    return Math.max(0, (decide(then)?.score ?? 0) - kept);
  };
  const ifNot = new Map<string, { readonly weighed: readonly WeighedCause[]; readonly gain: number }>();
  let next: NextMark | null = null;
  for (const [j, one] of all.entries()) {
    const p = now[j]?.probability ?? 0;
    for (const sign of one.cause.signs) {
      const asked = ask(sign, view, marked, seen);
      if (asked === null) continue;
      let not = ifNot.get(sign.key);
      if (not === undefined) {
        const weighed = all.map((other) => supposed(other, sign.key, null));
        not = { weighed, gain: gainOf(weighed) };
        ifNot.set(sign.key, not);
      }
      const yes = p * sign.sensitivity + (1 - p) * (1 - sign.specificity);
      const gainIf = gainOf(not.weighed.map((other, k) => (k === j ? supposed(one, sign.key, sign) : other)));
      const gain = yes * gainIf + (1 - yes) * not.gain;
      if (gain > (next?.gain ?? 0)) next = { ...asked, gain };
    }
  }
  return next;
}

/** How a sign that is still unknown could be found out in this view; null when it is known or cannot be. */
function ask(
  sign: Sign,
  view: View,
  marked: readonly Place[],
  seen: ReturnType<typeof known>,
): Omit<NextMark, 'gain'> | null {
  if (sign.view !== 'either' && sign.view !== view) return null;
  if (sign.kind === 'observed') {
    return seen.answers.has(sign.key) ? null : { kind: 'observation', position: null, point: sign.key };
  }
  if (seen.readings.has(sign.key)) return null;
  const place = placesForKey(sign.key, marked, view)?.[0];
  return place === undefined ? null : { kind: 'mark', position: place.position, point: place.point };
}
