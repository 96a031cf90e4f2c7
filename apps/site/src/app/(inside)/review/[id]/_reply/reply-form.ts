import type { Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import type { Marking } from '../_marking/marking.ts';
import { chooseFrames } from './choose-frames.ts';
import { firstWords } from './first-words.ts';

export type Draft = Reply<'saveReply'>;
/** What a coach edits of a reply; the version is kept apart. */
export type ReplyForm = Pick<Draft, 'words' | 'cause' | 'setUpTicks' | 'frames' | 'plan'>;
export type Plan = NonNullable<Draft['plan']>;
export type Drill = Reply<'listDrills'>['items'][number];

export const emptyReply: ReplyForm = { words: '', cause: null, setUpTicks: [], frames: [], plan: null };

/** Four sessions a week and a first look after four days: common practice, no source. */
const sessionsAWeek = 4;
const firstCheckInDays = 4;

export const planFor = (drill: Drill): Plan => ({
  drillId: drill.id,
  place: (['mat', 'grass', 'home'] as const).find((place) => drill.places.includes(place)) ?? 'mat',
  exaggeration: 'firm',
  weeklyMinutes: Math.max(10, drill.minutes * sessionsAWeek),
  firstCheckInDays,
});

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
};

/** A reply filled in for a cause: words, pictures, drill. Words the coach has changed stay as they are. */
export const fillFor = (form: ReplyForm, cause: string, written: string, given: Given): ReplyForm => {
  const { submission, fault, drills, marking } = given;
  const drill = drillsFor(cause, drills)[0] ?? null;
  const known = causes.find(({ id }) => id === cause) ?? null;
  const own = form.words.trim() !== '' && form.words !== written;
  return {
    ...form,
    cause,
    words: own ? form.words : firstWords({ submission, fault, drill }),
    frames: marking === null ? form.frames : chooseFrames(marking, known, submission.student.hand),
    plan: drill === null ? null : planFor(drill),
  };
};

/** Why a reply cannot be sent yet. */
export const missingOf = (form: ReplyForm): 'nothing' | 'cause' | null => {
  if (form.words.trim() === '' && form.cause === null) return 'nothing';
  return form.plan !== null && form.cause === null ? 'cause' : null;
};
