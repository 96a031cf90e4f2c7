import type { Cause, Sign } from '@ballfirst/library/types';
import { observedSignLogRatio } from '@ballfirst/numbers/observed-sign';
import type { Position, View } from '@ballfirst/swing/marks';
import type { Place } from '@ballfirst/swing/place';
import { placesForKey } from '@ballfirst/swing/places-for-key';
import { combineSigns } from './combine-signs.ts';
import { type Evidence, known } from './evidence.ts';
import type { RankInput } from './rank.ts';
import { type Scored, scoreCauses, type WeighedCause } from './score-causes.ts';
import { signEvidence } from './sign-evidence.ts';

/** What to look at next. For an observation `point` is its key. */
export type NextMark = {
  readonly kind: 'mark' | 'observation';
  readonly position: Position | null;
  readonly point: string;
  /** Expected gain in score of the cause that would then be fixed first. */
  readonly gain: number;
};

export type NextMarkInput = RankInput & { readonly view: View; readonly marked: readonly Place[] };

type Seen = { readonly cause: Cause; readonly evidence: readonly Evidence[] };

const best = (scored: readonly Scored[]) =>
  scored.reduce<Scored | null>((lead, one) => (lead === null || one.score > lead.score ? one : lead), null);

/** The evidence every cause would have if `sign` of `cause` turned out so. */
const supposed = (all: readonly Seen[], cause: Cause, sign: Sign, present: boolean): WeighedCause[] =>
  all.map((one) => {
    const added = one.cause.signs
      .filter(({ key }) => key === sign.key)
      .map((other) => {
        const same = one.cause.id === cause.id && other === sign;
        const logRatio = observedSignLogRatio(same && present, other.sensitivity, other.specificity);
        return { sign: other, logRatio, reading: null, answer: null };
      });
    return { cause: one.cause, logRatio: combineSigns([...one.evidence, ...added]) };
  });

/**
 * The mark or observation with the largest expected gain, each still unknown sign taken as one yes-or-no question.
 *
 * @returns null when no single one of them can change the first cause: enough
 * @source expected value of sample information (Raiffa & Schlaifer 1961), one question ahead
 */
export function nextMark(input: NextMarkInput): NextMark | null {
  const { fault, causes, baseRates, view, marked } = input;
  const seen = known(input.readings, input.observations);
  const all: Seen[] = causes
    .filter((cause) => cause.brings[fault] !== undefined)
    .map((cause) => ({
      cause,
      evidence: cause.signs.map((sign) => signEvidence(sign, seen)).filter((found) => found !== null),
    }));
  const now = scoreCauses(
    fault,
    all.map(({ cause, evidence }) => ({ cause, logRatio: combineSigns(evidence) })),
    baseRates,
  );
  const first = best(now);
  let next: NextMark | null = null;
  for (const [j, { cause }] of all.entries()) {
    for (const sign of cause.signs) {
      const asked = ask(sign, view, marked, seen);
      if (asked === null) continue;
      const p = now[j]?.probability ?? 0;
      const yes = p * sign.sensitivity + (1 - p) * (1 - sign.specificity);
      let gain = 0;
      for (const [present, chance] of [
        [true, yes],
        [false, 1 - yes],
      ] as const) {
        const then = scoreCauses(fault, supposed(all, cause, sign, present), baseRates);
        const kept = then.find(({ causeId }) => causeId === first?.causeId)?.score ?? 0;
        gain += chance * ((best(then)?.score ?? 0) - kept);
      }
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
  const place = placesForKey(sign.key, marked)?.[0];
  return place === undefined ? null : { kind: 'mark', position: place.position, point: place.point };
}
