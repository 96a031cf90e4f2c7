'use client';
import { useMemo } from 'react';
import { momentOfFrame, samePlace } from '../_marking/marking.ts';
import { carriedTo } from '../_marking/still-points.ts';
import { type Marked, suggestFrom } from '../_marking/suggest-from.ts';
import { usePass } from '../_stage/use-pass.ts';

type Given = Parameters<typeof usePass>[0] & {
  /** The last swing of this student that was marked the same way; null: none. */
  readonly last: Marked | null;
  readonly timesS: readonly number[];
  readonly heardAt: number | null;
};

/**
 * The pass, with what the frame on the stage stands for, the still points that are carried over to it, and where the points
 * of the last swing lie in this one.
 */
export const useAsking = (given: Given) => {
  const { marking, size, stage, pass, last, timesS, heardAt } = given;
  const { marks } = marking.content;
  const { frame } = stage;
  const asking = usePass(given);
  const { target, confirm, place } = asking;
  const moment = momentOfFrame(marks, frame, target);
  const carried = useMemo(() => carriedTo(marks, frame, moment, size), [marks, frame, moment, size]);
  const all = useMemo(
    () => suggestFrom({ marks, timesS, heardAt, size }, last, pass),
    [marks, timesS, heardAt, size, last, pass],
  );
  /** Where the mark that is asked for is suggested, on whatever frame. */
  const hint = all.find((one) => samePlace(one, target)) ?? null;
  const suggested = all.filter(
    (one) => one.frame === frame && !carried.some((other) => samePlace(one, other)),
  );
  const confirmHint = () => {
    if (hint === null || hint.frame !== frame) return false;
    place(frame, hint);
    return true;
  };
  const confirmCarried = () => moment !== null && confirm(carried);
  return {
    ...asking,
    ...{ moment, carried, suggested, hint, confirmCarried, confirmHint },
    /** By one key: the mark that is asked for where it is suggested, else the still points here. */
    confirmHere: () => confirmHint() || confirmCarried(),
    goToHint: () => hint !== null && stage.goTo(hint.frame),
  };
};

export type AskingHere = ReturnType<typeof useAsking>;
