import type { Body, Reply } from '@ballfirst/contracts/client';
import { type Outcome, outcomeOrder, type Tally } from '../../../../words/tally.ts';

type New = Body<'sendSubmission'>;
type Clip = Reply<'readClip'>;

/** Everything a student has entered so far, as it is kept on the device. */
export type Draft = {
  step: 1 | 2 | 3;
  view: Clip['view'];
  swingLength: Clip['swingLength'];
  clip: { fileName: string; clipId: string | null; done: boolean } | null;
  /** One entry a ball in the order they were tapped, so that the last can be taken back. */
  taps: Outcome[];
  balls: number;
  counted: boolean;
  startLine: New['startLine'];
  curve: New['curve'];
  club: New['club'];
  lie: New['lie'];
  typical: New['typical'];
  note: string;
  pain: New['pain'] | null;
  painNote: string;
  /** The Idempotency-Key of a sending that was not answered yet, with the body it belongs to. */
  once: { key: string; body: string } | null;
  /** The submission this became; its video may still be on the way. */
  sentId: string | null;
};

export const emptyDraft: Draft = {
  step: 1,
  view: 'face-on',
  swingLength: 'full',
  clip: null,
  taps: [],
  balls: 10,
  counted: true,
  startLine: 'cannot-see',
  curve: 'cannot-see',
  club: '7-iron',
  lie: 'mat',
  typical: 'usual',
  note: '',
  pain: null,
  painNote: '',
  once: null,
  sentId: null,
};

export const mostBalls = 30;

export const tallyOf = (draft: Pick<Draft, 'taps' | 'balls' | 'counted'>): Tally => {
  const count = (one: Outcome) => draft.taps.filter((tap) => tap === one).length;
  const counts = Object.fromEntries(outcomeOrder.map((one) => [one, count(one)])) as Record<Outcome, number>;
  return { balls: draft.balls, ...counts, counted: draft.counted };
};

/** One more ball, never more than the set has. */
export const tap = (draft: Draft, outcome: Outcome): Draft =>
  draft.taps.length >= draft.balls ? draft : { ...draft, taps: [...draft.taps, outcome] };

export const takeBack = (draft: Draft): Draft => ({ ...draft, taps: draft.taps.slice(0, -1) });

/** The number of balls never falls under what was tapped. */
export const setBalls = (draft: Draft, balls: number): Draft => ({
  ...draft,
  balls: Math.min(mostBalls, Math.max(1, draft.taps.length, balls)),
});

export const bodyOf = (draft: Draft, clipIds: string[], checkInId: string | null): New => ({
  clipIds,
  club: draft.club,
  lie: draft.lie,
  tally: tallyOf(draft),
  startLine: draft.startLine,
  curve: draft.curve,
  typical: draft.typical,
  note: draft.note.trim(),
  pain: draft.pain ?? 'none',
  painNote: draft.pain === 'none' ? '' : draft.painNote.trim(),
  checkInId,
});

/** What is left of the form once it was sent: the video that may still be on the way. */
export const afterSending = (draft: Draft, sentId: string): Draft => ({
  ...emptyDraft,
  view: draft.view,
  swingLength: draft.swingLength,
  clip: draft.clip,
  club: draft.club,
  lie: draft.lie,
  sentId,
});
