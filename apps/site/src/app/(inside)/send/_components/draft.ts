import type { Body, Reply } from '@ballfirst/contracts/client';
import type { ClipFacts } from '../../../../uploads/upload-state.ts';
import { type Outcome, outcomeOrder, type Tally } from '../../../../words/tally.ts';

type New = Body<'sendSubmission'>;
type Clip = Reply<'readClip'>;
export type View = Clip['view'];

/** A chosen video as the device remembers it; `facts` are those its upload began with. */
export type KeptClip = { fileName: string; clipId: string | null; done: boolean; facts: ClipFacts };

/** A chosen photo of the grip as the device remembers it. */
export type KeptPhoto = { fileName: string; clipId: string | null; done: boolean };

/** What is said about the balls, before sending and when it is put right. */
export type BallsDraft = {
  /** One entry a ball in the order they were tapped, so that the last can be taken back. */
  taps: Outcome[];
  balls: number;
  counted: boolean;
  startLine: New['startLine'];
  curve: New['curve'];
  club: New['club'];
  lie: New['lie'];
  typical: New['typical'];
};

/** Everything a student has entered so far, as it is kept on the device. */
export type Draft = BallsDraft & {
  step: 1 | 2 | 3;
  /** Null until the student says: then it is as in the present step of the drill, or a full swing. */
  swingLength: Clip['swingLength'] | null;
  clips: Record<View, KeptClip | null>;
  photo: KeptPhoto | null;
  note: string;
  pain: New['pain'] | null;
  painNote: string;
  /** The Idempotency-Key of a sending that was not answered yet, with the body it belongs to. */
  once: { key: string; body: string } | null;
  /** The submission this became; its video may still be on the way. */
  sentId: string | null;
};

export const views: readonly View[] = ['face-on', 'down-the-line'];

export const emptyDraft: Draft = {
  step: 1,
  swingLength: null,
  clips: { 'face-on': null, 'down-the-line': null },
  photo: null,
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

export const tallyOf = (draft: Pick<BallsDraft, 'taps' | 'balls' | 'counted'>): Tally => {
  const count = (one: Outcome) => draft.taps.filter((tap) => tap === one).length;
  const counts = Object.fromEntries(outcomeOrder.map((one) => [one, count(one)])) as Record<Outcome, number>;
  return { balls: draft.balls, ...counts, counted: draft.counted };
};

/** One more ball, never more than the set has. */
export const tap = <D extends BallsDraft>(draft: D, outcome: Outcome): D =>
  draft.taps.length >= draft.balls ? draft : { ...draft, taps: [...draft.taps, outcome] };

export const takeBack = <D extends BallsDraft>(draft: D): D => ({ ...draft, taps: draft.taps.slice(0, -1) });

/** The number of balls never falls under what was tapped. */
export const setBalls = <D extends BallsDraft>(draft: D, balls: number): D => ({
  ...draft,
  balls: Math.min(Math.max(mostBalls, draft.balls), Math.max(1, draft.taps.length, balls)),
});

export const clipIdsOf = (draft: Draft): string[] =>
  views.flatMap((view) => {
    const id = draft.clips[view]?.clipId ?? null;
    return id === null ? [] : [id];
  });

export const bodyOf = (draft: Draft, first: Clip['swingLength'], checkInId: string | null): New => ({
  clipIds: clipIdsOf(draft),
  swingLength: draft.swingLength ?? first,
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
  gripPhotoId: draft.photo?.clipId ?? null,
});

/** What is left of the form once it was sent: the videos that may still be on the way. */
export const afterSending = (draft: Draft, sentId: string): Draft => ({
  ...emptyDraft,
  swingLength: draft.swingLength,
  clips: draft.clips,
  photo: draft.photo,
  club: draft.club,
  lie: draft.lie,
  sentId,
});
