import { everyDrill } from '@ballfirst/library/cautions';
import type { Cause, Drill, Exaggeration, Place, Rung } from '@ballfirst/library/types';
import { benefitOf, type Dose, type LikelyCause } from './benefit.ts';
import { bestDoses } from './best-doses.ts';
import { exaggerationFor, stationFor } from './drill-fit.ts';
import { ladderAt, ladderWith } from './ladder-at.ts';
import { drillsThatFit, type LeftOut, mostDays, notTaken } from './left-out.ts';
import type { Means } from './means.ts';

export type { LikelyCause } from './benefit.ts';
export { ladderAt } from './ladder-at.ts';

/** A drill that supports the first: more of the same movement, or the set-up without a ball. */
export type SecondDrill = {
  readonly drillId: string;
  readonly drillVersion: number;
  readonly ladder: readonly Rung[];
  readonly minutes: number;
};

/** The drill for the one movement, at the student's place, with the rungs that are sound there, and what supports it. */
export type Programme = {
  readonly drillId: string;
  readonly drillVersion: number;
  readonly causeId: string;
  readonly exaggeration: Exaggeration;
  readonly place: Place;
  readonly ladder: readonly Rung[];
  readonly minutes: number;
  readonly second: SecondDrill | null;
  readonly daysPerWeek: number;
  readonly weeklyMinutes: number;
  readonly ballsAtMost: number;
  /** Never empty: those of every drill, then of these. */
  readonly cautions: readonly string[];
  readonly leftOut: readonly LeftOut[];
};
/** Nothing fits (pain, place, equipment): why, drill by drill. */
export type NoProgramme = { readonly drillId: null; readonly leftOut: readonly LeftOut[] };

export type ProgrammeQuestion = {
  /** The cause to work on first, then others it may help with. */
  readonly rankedCauses: readonly LikelyCause[];
  readonly means: Means;
  readonly library: { readonly causes: readonly Cause[]; readonly drills: readonly Drill[] };
  /** Mild unless the coach, or a try that failed twice, asks for more. */
  readonly exaggeration?: Exaggeration;
};

const causeOf = (id: string, causes: readonly Cause[]): Cause => {
  const found = causes.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`No cause is called "${id}".`);
  return found;
};

/** Set-up is ticked beside a movement: drills without a ball for the ticks that are likely as well. */
const setUpDrills = (question: ProgrammeQuestion, first: Cause): readonly string[] =>
  question.rankedCauses
    .slice(1)
    .flatMap(({ id }) =>
      question.library.causes.filter((cause) => cause.id === id && cause.tick !== undefined),
    )
    .flatMap((cause) => cause.drills)
    .filter((id) => !first.drills.includes(id))
    .filter((id) =>
      question.library.drills.some((drill) => drill.id === id && drill.ladder.every((rung) => !rung.ball)),
    );

/**
 * Chooses what promises most for the first cause, exactly, over all its drills and minutes that fit the student: one drill
 * and at most one that supports it. Never more than one movement: other movements are listed as left out.
 *
 * @throws RangeError on no cause, an unknown first cause, fewer than one day a week or balls that are no number
 */
export const chooseProgramme = (question: ProgrammeQuestion): Programme | NoProgramme => {
  const { rankedCauses, means, library } = question;
  const [likeliest] = rankedCauses;
  if (likeliest === undefined) throw new RangeError('A programme needs a cause to work on.');
  const cause = causeOf(likeliest.id, library.causes);
  if (!(means.daysPerWeek >= 1)) throw new RangeError('A programme needs one day a week at least.');
  if (means.balls !== undefined && !(means.balls >= 0))
    throw new RangeError('Balls are counted from none up.');

  const main = drillsThatFit(cause.drills, question);
  const support = drillsThatFit([...new Set(setUpDrills(question, cause))], question);
  const benefit = (doses: readonly Dose[]) => benefitOf(doses, rankedCauses, library.causes);
  const doses = bestDoses(main.fitting, support.fitting, means.minutes, benefit);
  if (doses === null) return { drillId: null, leftOut: main.leftOut };

  const taken = doses.map((dose) => {
    const drill = library.drills.find((one) => one.id === dose.drillId);
    if (drill === undefined) throw new RangeError(`No drill is called "${dose.drillId}".`);
    return { drill, minutes: dose.minutes, ladder: ladderWith(drill, means.place, means.balls) };
  });
  const [first, second] = taken;
  if (first === undefined) return { drillId: null, leftOut: main.leftOut };
  const daysPerWeek = Math.min(Math.floor(means.daysPerWeek), mostDays(taken.map(({ ladder }) => ladder)));
  const minutes = doses.reduce((sum, dose) => sum + dose.minutes, 0);
  const station = stationFor(first.drill, means.place);
  return {
    drillId: first.drill.id,
    drillVersion: first.drill.version,
    causeId: cause.id,
    exaggeration: exaggerationFor(first.drill, means, question.exaggeration ?? 'mild'),
    place: means.place,
    ladder: first.ladder,
    minutes: first.minutes,
    second:
      second === undefined
        ? null
        : {
            drillId: second.drill.id,
            drillVersion: second.drill.version,
            ladder: second.ladder,
            minutes: second.minutes,
          },
    daysPerWeek,
    weeklyMinutes: minutes * daysPerWeek,
    ballsAtMost: Math.min(
      station?.ballsAtMost ?? first.drill.ballsAtMost,
      means.balls ?? Number.POSITIVE_INFINITY,
    ),
    cautions: [...new Set([...everyDrill, ...taken.flatMap(({ drill }) => drill.cautions)])],
    leftOut: [
      ...main.leftOut,
      ...notTaken(
        main.fitting,
        taken.map(({ drill }) => drill),
      ),
      ...leftOutCauses(
        question,
        taken.map(({ drill }) => drill),
      ),
      ...leftOutRungs(first.drill, first.ladder, means),
    ],
  };
};

const leftOutCauses = (
  { rankedCauses, library }: ProgrammeQuestion,
  taken: readonly Drill[],
): readonly LeftOut[] =>
  rankedCauses.slice(1).flatMap(({ id }) => {
    const cause = library.causes.find((one) => one.id === id);
    if (cause === undefined) return [{ what: id, why: 'One movement at a time.' }];
    if (cause.tick === undefined) return [{ what: cause.name, why: 'One movement at a time.' }];
    const helped = taken.some((drill) => cause.drills.includes(drill.id));
    return helped ? [] : [{ what: cause.name, why: 'Set right with a tick, without a drill of its own.' }];
  });

const leftOutRungs = (drill: Drill, ladder: readonly Rung[], { place, balls }: Means): readonly LeftOut[] => {
  const found: LeftOut[] = [];
  if (ladderAt(drill, place).length < drill.ladder.length) {
    found.push({ what: 'The longer swings', why: `Not sound at this place: ${place}.` });
  }
  if (balls === 0 && ladder.length < ladderAt(drill, place).length) {
    found.push({ what: 'The swings with a ball', why: 'No balls at hand.' });
  }
  return found;
};
