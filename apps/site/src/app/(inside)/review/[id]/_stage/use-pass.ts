'use client';
import type { Place } from '@ballfirst/swing/marks/place';
import { useEffect, useRef, useState } from 'react';
import { aimAt } from '../_marking/aim-at.ts';
import { frameOfMoment, keyOf, type Mark, markAt, nextPlace, samePlace } from '../_marking/marking.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import type { Spot } from './use-pointer.ts';
import type { StageView } from './use-stage.ts';
import { insidePicture, partOf, type Size } from './view-part.ts';

type Given = {
  pass: readonly Place[];
  marking: ClipMarking;
  size: Size;
  stage: StageView;
  canWork: boolean;
};

/** The first pass: which mark is asked for, what a click, a drag or a key does to it, and on to the next. */
export const usePass = ({ pass, marking, size, stage, canWork }: Given) => {
  const { marks } = marking.content;
  const [target, setTarget] = useState<Place | null>(() => nextPlace(pass, marks, null));
  const [selected, setSelected] = useState<Place | null>(null);
  /** Where the keyboard aims for the mark that is asked for. */
  const [aim, setAim] = useState<Spot | null>(null);
  /** A mark that arrows move until it is let go. */
  const [held, setHeld] = useState<Place | null>(null);
  const dragged = useRef<Mark | null>(null);
  // Another pass, or marks that were found on this device: what is asked for begins anew.
  const restored = marking.note === 'restored';
  const begun = useRef({ pass, restored });
  useEffect(() => {
    if (begun.current.pass === pass && begun.current.restored === restored) return;
    begun.current = { pass, restored };
    setTarget(nextPlace(pass, marks, null));
    setAim(null);
  }, [pass, restored, marks]);

  const last = selected === null ? undefined : markAt(marks, selected);
  const aimFor = (place: Place, among: readonly Mark[]): Spot => {
    const part = partOf(size, stage.zoom);
    const middle = { x: part.x + part.width / 2, y: part.y + part.height / 2 };
    const start = aimAt(among, place, last ?? null, middle);
    if (stage.zoom.times > 1) stage.centre(start.x, start.y);
    return start;
  };
  const markFor = (place: Place, frame: number, at: Spot): Mark => ({
    ...place,
    frame,
    ...insidePicture(size, at.x, at.y),
    source: 'coach',
  });

  const choose = (place: Place) => {
    setTarget(place);
    setAim(null);
    const mark = markAt(marks, place);
    setSelected(mark === undefined ? null : place);
    setHeld(mark === undefined || !canWork ? null : place);
    const frame = mark?.frame ?? frameOfMoment(marks, place.position);
    if (frame !== null) stage.goTo(frame);
    if (mark !== undefined) stage.centre(mark.x, mark.y);
  };

  /** Places the mark that is asked for on the frame that is seen, and goes on to the next without one. */
  const place = (frame: number, at: Spot) => {
    if (target === null || !canWork) return;
    const mark = markFor(target, frame, at);
    marking.place(mark);
    setSelected(target);
    setHeld(null);
    const others = [...marks.filter((one) => keyOf(one) !== keyOf(mark)), mark];
    const next = nextPlace(pass, others, target);
    setTarget(next);
    const known = next === null ? null : frameOfMoment(others, next.position);
    if (known !== null) stage.goTo(known);
    // The keyboard goes on aiming while the moment stays; another one has to be stepped to first.
    setAim(aim !== null && next !== null && known === frame ? aimFor(next, others) : null);
  };

  const moveTo = (at: Place, x: number, y: number) => {
    const mark = markAt(marks, at);
    if (mark === undefined || !canWork) return;
    if (mark.frame !== stage.frame) stage.goTo(mark.frame);
    marking.place({ ...mark, ...insidePicture(size, x, y), source: 'coach' });
  };
  const nudge = (at: Place | null, dx: number, dy: number) => {
    const mark = at === null ? undefined : markAt(marks, at);
    if (mark !== undefined) moveTo(mark, mark.x + dx, mark.y + dy);
  };

  return {
    target,
    selected,
    aim,
    held,
    choose,
    place,
    aiming: aim !== null || held !== null,
    startAim: () => {
      if (target === null || !canWork) return;
      setHeld(null);
      setAim(aimFor(target, marks));
    },
    /** Arrow keys: what is aimed, else what is held. */
    move: (dx: number, dy: number) => {
      if (aim !== null) setAim(insidePicture(size, aim.x + dx, aim.y + dy));
      else nudge(held, dx, dy);
    },
    nudge: (dx: number, dy: number) => nudge(selected, dx, dy),
    letGo: (): boolean => {
      const was = aim !== null || held !== null;
      setAim(null);
      setHeld(null);
      return was;
    },
    /** On to the next place without a mark, passing this one by. */
    skip: () => {
      const at = pass.findIndex((one) => samePlace(one, target));
      const after = pass[(at + 1) % Math.max(1, pass.length)];
      if (after !== undefined) choose(nextPlace(pass, marks, after) ?? after);
    },
    /** A drag begins on a mark, or on a carried one, which is confirmed by it. */
    grab: (mark: Mark) => {
      const own: Mark = { ...mark, source: 'coach' };
      dragged.current = own;
      setSelected(own);
      setHeld(null);
      setAim(null);
      marking.place(own);
    },
    drag: (at: Spot) => {
      if (dragged.current === null) return;
      dragged.current = { ...dragged.current, ...insidePicture(size, at.x, at.y) };
      marking.drag(dragged.current);
    },
    drop: () => {
      dragged.current = null;
    },
    confirm: (carried: readonly Mark[]) => {
      for (const mark of carried) marking.place({ ...mark, source: 'coach' });
    },
    remove: (at: Place | null) => {
      if (at === null || markAt(marks, at) === undefined || !canWork) return;
      marking.remove(at);
      setSelected(null);
      setHeld(null);
      setTarget(at);
    },
    put: (mark: Mark) => marking.place({ ...mark, ...insidePicture(size, mark.x, mark.y), source: 'coach' }),
  };
};

export type Asking = ReturnType<typeof usePass>;
