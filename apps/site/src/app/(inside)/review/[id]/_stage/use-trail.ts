'use client';
import type { ClubheadPixel } from '@ballfirst/swing/arc/clubhead-track';
import { useEffect, useState } from 'react';
import { dropDraft, readDraft } from '../_marking/kept-draft.ts';
import type { ClipMarking } from '../_marking/use-marking.ts';
import type { StageView } from './use-stage.ts';

const isTrail = (found: unknown): found is ClubheadPixel[] =>
  Array.isArray(found) &&
  found.every(
    (one) => typeof one?.frame === 'number' && typeof one.x === 'number' && typeof one.y === 'number',
  );
/** As many as the arc takes. */
const most = 200;
const none: readonly ClubheadPixel[] = [];

/** The clubhead on one frame after another: part of the marks of its clip, stored and undone with them. */
export const useTrail = (marking: ClipMarking, stage: StageView, canWork: boolean) => {
  const { clipId, trace, retrace } = marking;
  const trail = marking.content.trail ?? none;
  const [on, setOn] = useState(false);
  // Once such a trail was kept on the device alone: it goes where the marks are.
  const count = trail.length;
  useEffect(() => {
    const key = `trail.${clipId}`;
    const old = canWork ? readDraft(key, isTrail) : null;
    if (old === null) return;
    dropDraft(key);
    if (count === 0) retrace(old);
  }, [canWork, clipId, count, retrace]);
  return {
    on,
    trail,
    toggle: () => setOn((now) => !now),
    place: (frame: number, { x, y }: { readonly x: number; readonly y: number }) => {
      const tenth = (value: number) => Math.round(value * 10) / 10;
      if (trail.filter((one) => one.frame !== frame).length >= most) return;
      trace({ frame, x: tenth(x), y: tenth(y) });
      stage.step(1);
    },
    back: () => {
      const last = trail.at(-1);
      retrace(trail.slice(0, -1));
      if (last !== undefined) stage.goTo(last.frame);
    },
    clear: () => retrace([]),
  };
};

export type Trail = ReturnType<typeof useTrail>;
