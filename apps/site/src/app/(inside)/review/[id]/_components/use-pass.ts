'use client';
import type { Place } from '@ballfirst/swing/place';
import { useState } from 'react';
import { frameOfMoment, keyOf, type Mark, markAt, nextPlace } from '../_marking/marking.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import { insidePicture, type Size } from './view-part.ts';

type Stage = { frame: number; goTo: (frame: number) => void; centre: (x: number, y: number) => void };

/** The first pass: which mark is asked for, and what a click or a nudge does to it. */
export const usePass = (pass: readonly Place[], marking: ClipMarking, size: Size, stage: Stage) => {
  const { marks } = marking.content;
  const [target, setTarget] = useState<number | null>(() => nextPlace(pass, marks, 0));
  const [selected, setSelected] = useState<Place | null>(null);
  const asked = target === null ? undefined : pass[target];

  const choose = (index: number) => {
    const place = pass[index];
    if (place === undefined) return;
    setTarget(index);
    const mark = markAt(marks, place);
    setSelected(mark === undefined ? null : place);
    const frame = mark?.frame ?? frameOfMoment(marks, place.position);
    if (frame !== null) stage.goTo(frame);
    if (mark !== undefined) stage.centre(mark.x, mark.y);
  };

  const put = (place: Place, frame: number, x: number, y: number): Mark => {
    const mark: Mark = { ...place, frame, ...insidePicture(size, x, y), source: 'coach' };
    marking.place(mark);
    return mark;
  };

  /** Places the mark that is asked for and goes on to the next without one. */
  const place = (frame: number, x: number, y: number) => {
    if (asked === undefined || target === null) return;
    const mark = put(asked, frame, x, y);
    setSelected(asked);
    const others = [...marks.filter((one) => keyOf(one) !== keyOf(mark)), mark];
    const next = nextPlace(pass, others, target);
    setTarget(next);
    const coming = next === null ? undefined : pass[next];
    const known = coming === undefined ? null : frameOfMoment(others, coming.position);
    if (known !== null) stage.goTo(known);
  };

  /** Moves the chosen mark, shown on its own frame. */
  const nudge = (dx: number, dy: number) => {
    const mark = selected === null ? undefined : markAt(marks, selected);
    if (mark === undefined || selected === null) return;
    if (mark.frame !== stage.frame) stage.goTo(mark.frame);
    put(selected, mark.frame, mark.x + dx, mark.y + dy);
  };

  const remove = (at: Place) => {
    marking.remove(at);
    setSelected(null);
  };
  return { target, asked, selected, choose, place, nudge, remove };
};
