'use client';
import type { Place } from '@ballfirst/swing/marks/place';
import { useMemo, useState } from 'react';
import { dropMark, frameOfMoment, type Mark, putMark } from '../_marking/marking.ts';
import { halfWay, ownDoubt } from '../_marking/own-doubt.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import type { Size } from '../_stage/view-part.ts';

const none: readonly Mark[] = [];

/**
 * The same marks once more, without seeing the first: what they differ by is the doubt of one's own hand. Nothing of it is
 * stored but the marks half-way between, if they are taken.
 */
export const useSecondRound = (marking: ClipMarking, size: Size) => {
  const [again, setAgain] = useState<Mark[] | null>(null);
  const on = again !== null;
  const first = marking.content.marks;
  const second = again ?? none;
  /** The places of the first round in the order of their frames, as they were when the second began. */
  const [places, setPlaces] = useState<readonly Place[] | null>(null);
  /** What the pass marks on while the round lasts: the second marks, and no step of them is stored. */
  const blind: ClipMarking = {
    ...marking,
    content: { ...marking.content, marks: [...second] },
    place: (mark) => setAgain((now) => putMark({ marks: now ?? [], observations: [] }, mark).marks),
    drag: (mark) => setAgain((now) => putMark({ marks: now ?? [], observations: [] }, mark).marks),
    remove: (at) => setAgain((now) => dropMark({ marks: now ?? [], observations: [] }, at).marks),
    undo: () => setAgain((now) => (now ?? []).slice(0, -1)),
    redo: () => undefined,
    canUndo: second.length > 0,
    canRedo: false,
  };
  const doubt = useMemo(() => ownDoubt(first, second, size), [first, second, size]);
  return {
    on,
    marking: on ? blind : marking,
    count: second.length,
    doubt,
    places: on ? places : null,
    begin: () => {
      setPlaces([...first].sort((a, b) => a.frame - b.frame));
      setAgain([]);
    },
    end: () => setAgain(null),
    /** The frame on which the mark that is asked for was placed first; null outside a second round. */
    frameOf: (place: Place | null): number | null =>
      on && place !== null ? frameOfMoment(first, place.position) : null,
    takeHalfWay: () => {
      for (const mark of halfWay(first, second)) marking.place(mark);
      setAgain(null);
    },
  };
};

export type SecondRound = ReturnType<typeof useSecondRound>;
