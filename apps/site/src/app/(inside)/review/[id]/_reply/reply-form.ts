import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import type { Marking } from '../_marking/marking.ts';
import { chooseFrames } from './choose-frames.ts';
import { firstWords } from './first-words.ts';
import type { PhraseHelp } from './phrase-help.ts';

export type Draft = Reply<'saveReply'>;
/** What a coach edits of a reply; the version is kept apart. */
export type ReplyForm = Pick<Draft, 'words' | 'cause' | 'setUpTicks' | 'frames' | 'plan' | 'moreCauses'> & {
  /** The coach said that more than one movement and three ticks are meant. */
  moreAgreed: boolean;
  /** The cause whose film goes with it; null: none. */
  teachingClip: string | null;
  /** A recorded talk-through goes with it unless the coach leaves it out. */
  withTalk: boolean;
};
export type Plan = NonNullable<Draft['plan']>;
export type Drill = Reply<'listDrills'>['items'][number];
export type Offer = Reply<'offerProgramme'>;

export const emptyReply: ReplyForm = {
  ...{ words: '', cause: null, setUpTicks: [], frames: [], plan: null },
  ...{ moreCauses: [], moreAgreed: false, teachingClip: null, withTalk: true },
};

/** Four sessions a week and a first look after four days: common practice, no source. */
const sessionsAWeek = 4;
const firstCheckInDays = 4;

/** A drill the coach takes instead: on the days and at the place that were offered, as long as it is written for. */
export const planFor = (drill: Drill, offered: Plan | null = null): Plan => {
  const there = offered !== null && drill.places.includes(offered.place) ? offered.place : null;
  const daysPerWeek = offered?.daysPerWeek ?? sessionsAWeek;
  const place =
    there ?? (['mat', 'grass', 'home'] as const).find((one) => drill.places.includes(one)) ?? 'mat';
  return {
    drillId: drill.id,
    place,
    exaggeration: offered?.exaggeration ?? 'firm',
    weeklyMinutes: Math.max(10, drill.minutes * daysPerWeek),
    firstCheckInDays: offered?.firstCheckInDays ?? firstCheckInDays,
    daysPerWeek,
    minutesPerDay: Math.max(5, drill.minutes),
  };
};

/** The plan with other days or minutes; the minutes of the week follow. */
export const redosed = (plan: Plan, dose: { days?: number; minutes?: number; second?: null }): Plan => {
  const daysPerWeek = dose.days ?? plan.daysPerWeek ?? sessionsAWeek;
  const minutesPerDay =
    dose.minutes ?? plan.minutesPerDay ?? Math.max(5, Math.round(plan.weeklyMinutes / daysPerWeek));
  const second = dose.second === null ? null : (plan.second ?? null);
  const weekly = daysPerWeek * (minutesPerDay + (second?.minutes ?? 0));
  return {
    ...plan,
    ...{ daysPerWeek, minutesPerDay, second },
    weeklyMinutes: Math.min(600, Math.max(10, weekly)),
  };
};

/** The drills that work on a cause, in the order the library recommends them. */
export const drillsFor = (causeId: string | null, drills: readonly Drill[]): Drill[] => {
  const order = causes.find(({ id }) => id === causeId)?.drills ?? [];
  const rank = (drill: Drill) => (order.includes(drill.id) ? order.indexOf(drill.id) : order.length);
  return drills
    .filter((drill) => causeId !== null && drill.causes.includes(causeId))
    .sort((a, b) => rank(a) - rank(b));
};

type Given = {
  submission: Reply<'readSubmission'>;
  fault: FaultId;
  drills: readonly Drill[];
  marking: Pick<Marking, 'clipId' | 'marks'> | null;
  /** Null: it could not be asked for; the library's first drill stands in. */
  offer: Pick<Offer, 'plan'> | null;
  phrases: PhraseHelp;
};

/** A reply filled in for a cause: words, pictures, drill. Words the coach has changed stay as they are. */
export const fillFor = (form: ReplyForm, cause: string, written: string, given: Given): ReplyForm => {
  const { submission, fault, drills, marking, offer, phrases } = given;
  const first = drillsFor(cause, drills)[0];
  const plan = offer === null ? (first === undefined ? null : planFor(first)) : offer.plan;
  const drill = drills.find(({ id }) => id === plan?.drillId) ?? null;
  const known = causes.find(({ id }) => id === cause) ?? null;
  const own = form.words.trim() !== '' && form.words !== written;
  return {
    ...form,
    cause,
    moreCauses: form.moreCauses.filter((one) => one !== cause),
    // A film about another cause no longer fits.
    teachingClip: form.teachingClip === cause ? cause : null,
    words: own ? form.words : firstWords({ submission, fault, drill, cause, phrases }),
    frames: marking === null ? form.frames : chooseFrames(marking, known, submission.student.hand),
    plan,
  };
};

/** Why a reply cannot be sent yet. */
export const missingOf = (form: ReplyForm): 'nothing' | 'cause' | null => {
  if (form.words.trim() === '' && form.cause === null) return 'nothing';
  return form.plan !== null && form.cause === null ? 'cause' : null;
};
