import type { Body } from '@ballfirst/contracts/client';
import type { Programme } from '../../../../drill-card/rung-states.ts';

type Log = Body<'logPractice'>;

/** What a student has tapped so far; kept on the device until it is logged. */
export type PracticeDraft = {
  readonly rung: string;
  readonly balls: number;
  readonly clean: number | null;
  readonly filmed: boolean;
  readonly pain: Log['pain'] | null;
  /** The Idempotency-Key of a log that was not answered yet, with the body it belongs to. */
  readonly once: { readonly key: string; readonly body: string } | null;
};

/** A drill of a programme and where the student stands on it; both of a programme's drills are logged alike. */
export type Practised = Pick<Programme, 'rung'> & {
  readonly drill: Pick<Programme['drill'], 'id' | 'ladder'>;
};

/** The student's own rung with its set of balls filled in. */
export const freshPractice = (practised: Practised): PracticeDraft => ({
  rung: practised.rung,
  balls: practised.drill.ladder.find(({ id }) => id === practised.rung)?.balls ?? 10,
  clean: null,
  filmed: false,
  pain: null,
  once: null,
});

/** A draft of a rung that the drill has no longer is not carried over. */
export const keptPractice = (kept: string | null, practised: Practised): PracticeDraft => {
  const fresh = freshPractice(practised);
  try {
    const parsed: unknown = JSON.parse(kept ?? 'null');
    if (typeof parsed !== 'object' || parsed === null) return fresh;
    const draft: PracticeDraft = { ...fresh, ...parsed };
    return practised.drill.ladder.some(({ id }) => id === draft.rung) ? draft : fresh;
  } catch {
    return fresh;
  }
};

/** Fewer balls than clean ones cannot be: the count of clean ones is asked again. */
export const withBalls = (draft: PracticeDraft, balls: number, most: number): PracticeDraft => {
  const kept = Math.min(most, Math.max(1, Math.round(balls)));
  return { ...draft, balls: kept, clean: draft.clean !== null && draft.clean > kept ? null : draft.clean };
};

/** Null while something is not said yet. `second`: the drill, where it is not the programme's first. */
export const practiceBody = (draft: PracticeDraft, second: string | null = null): Log | null =>
  draft.clean === null || draft.pain === null
    ? null
    : {
        ...(second === null ? {} : { drillId: second }),
        rung: draft.rung,
        balls: draft.balls,
        clean: draft.clean,
        filmed: draft.filmed,
        pain: draft.pain,
      };
