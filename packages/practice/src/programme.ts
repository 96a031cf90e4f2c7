import type { Cause, Drill, Exaggeration, Place, Rung } from '@ballfirst/library/types';
import { exaggerationFor, stationFor, whyNot } from './drill-fit.ts';
import type { Means } from './means.ts';

/** A cause of the ranking: how likely it is, 0..1, and how heavily it weighs for the fault (3, 2 or 1). */
export type LikelyCause = { readonly id: string; readonly probability: number; readonly weight: number };

export type LeftOut = { readonly what: string; readonly why: string };

/** The one drill for the one movement, at the student's place, with the rungs that are sound there. */
export type Programme = {
  readonly drillId: string;
  readonly drillVersion: number;
  readonly causeId: string;
  readonly exaggeration: Exaggeration;
  readonly place: Place;
  readonly ladder: readonly Rung[];
  readonly minutes: number;
  readonly daysPerWeek: number;
  readonly weeklyMinutes: number;
  readonly ballsAtMost: number;
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

// A quarter of an hour of the first, second, third … drill of a cause: common practice, no source; later from data.
const effectByPreference = [0.5, 0.4, 0.3, 0.25];
const leastMinutes = 10;
const minutesStep = 5;
// A day of rest after full swings; set-ups may be done almost daily.
const daysAtMost = (ladder: readonly Rung[]): number => (ladder.some((rung) => rung.ball) ? 4 : 6);

const effect = (drillId: string, cause: Cause): number => {
  const preference = cause.drills.indexOf(drillId);
  return preference < 0 ? 0 : (effectByPreference[preference] ?? 0.2);
};

/** Sum over causes of P w (1 - (1 - e)^(m/15)) for one drill of m minutes. */
const gain = (drill: Drill, minutes: number, question: ProgrammeQuestion): number => {
  let sum = 0;
  for (const { id, probability, weight } of question.rankedCauses) {
    const cause = question.library.causes.find((one) => one.id === id);
    if (cause !== undefined)
      sum += probability * weight * (1 - (1 - effect(drill.id, cause)) ** (minutes / 15));
  }
  return sum;
};

const minuteChoices = (drill: Drill, means: Means): readonly number[] => {
  const atMost = Math.max(leastMinutes, Math.min(means.minutes, drill.minutes));
  const choices: number[] = [];
  for (let minutes = leastMinutes; minutes <= atMost; minutes += minutesStep) choices.push(minutes);
  return choices;
};

/** The rungs that are sound at the place: up to the station's last one. */
export const ladderAt = (drill: Drill, place: Place): readonly Rung[] => {
  const last = stationFor(drill, place)?.lastRung;
  const end = last === undefined ? -1 : drill.ladder.findIndex((rung) => rung.id === last);
  return end < 0 ? drill.ladder : drill.ladder.slice(0, end + 1);
};

/**
 * Chooses the drill that promises most for the first cause, exactly, over all its drills and minutes that fit the
 * student. Never more than one movement: other causes only break ties and are listed as left out.
 *
 * @throws RangeError on no cause, an unknown first cause, or fewer than one day a week
 */
export const chooseProgramme = (question: ProgrammeQuestion): Programme | NoProgramme => {
  const { rankedCauses, means, library } = question;
  const first = rankedCauses[0];
  if (first === undefined) throw new RangeError('A programme needs a cause to work on.');
  const cause = library.causes.find((one) => one.id === first.id);
  if (cause === undefined) throw new RangeError(`No cause is called "${first.id}".`);
  if (!(means.daysPerWeek >= 1)) throw new RangeError('A programme needs one day a week at least.');

  const leftOut: LeftOut[] = [];
  let best: { drill: Drill; minutes: number; gain: number } | null = null;
  const fitting: Drill[] = [];
  for (const id of cause.drills) {
    const drill = library.drills.find((one) => one.id === id);
    if (drill === undefined) continue;
    const why = whyNot(drill, means);
    if (why !== null) {
      leftOut.push({ what: drill.name, why });
      continue;
    }
    fitting.push(drill);
    for (const minutes of minuteChoices(drill, means)) {
      const promise = gain(drill, minutes, question);
      if (best === null || promise > best.gain) best = { drill, minutes, gain: promise };
    }
  }
  if (best === null) return { drillId: null, leftOut };

  const { drill, minutes } = best;
  for (const other of fitting) {
    if (other !== drill)
      leftOut.push({ what: other.name, why: 'One drill at a time; this one promises less.' });
  }
  for (const { id } of rankedCauses.slice(1)) {
    const name = library.causes.find((one) => one.id === id)?.name ?? id;
    leftOut.push({ what: name, why: 'One movement at a time.' });
  }
  const ladder = ladderAt(drill, means.place);
  if (ladder.length < drill.ladder.length) {
    leftOut.push({ what: 'The longer swings', why: `Not sound at this place: ${means.place}.` });
  }
  const daysPerWeek = Math.min(Math.floor(means.daysPerWeek), daysAtMost(ladder));
  const wanted = question.exaggeration ?? 'mild';
  return {
    drillId: drill.id,
    drillVersion: drill.version,
    causeId: cause.id,
    exaggeration: exaggerationFor(drill, means, wanted),
    place: means.place,
    ladder,
    minutes,
    daysPerWeek,
    weeklyMinutes: minutes * daysPerWeek,
    ballsAtMost: stationFor(drill, means.place)?.ballsAtMost ?? drill.ballsAtMost,
    leftOut,
  };
};
