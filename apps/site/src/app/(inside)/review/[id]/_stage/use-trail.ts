'use client';
import type { ClubheadPixel } from '@ballfirst/swing/clubhead-track';
import { useEffect, useState } from 'react';
import { dropDraft, keepDraft, readDraft } from '../_marking/kept-draft.ts';
import type { StageView } from './use-stage.ts';

const isTrail = (found: unknown): found is ClubheadPixel[] =>
  Array.isArray(found) &&
  found.every(
    (one) => typeof one?.frame === 'number' && typeof one.x === 'number' && typeof one.y === 'number',
  );
/** As many as the arc takes. */
const most = 200;

/** The clubhead on one frame after another, kept on this device. */
export const useTrail = (clipId: string, stage: StageView) => {
  const key = `trail.${clipId}`;
  const [on, setOn] = useState(false);
  const [trail, setTrail] = useState<readonly ClubheadPixel[]>([]);
  useEffect(() => setTrail(readDraft(key, isTrail) ?? []), [key]);
  const change = (next: readonly ClubheadPixel[]) => {
    setTrail(next);
    if (next.length === 0) dropDraft(key);
    else keepDraft(key, next);
  };
  return {
    on,
    trail,
    toggle: () => setOn((now) => !now),
    place: (frame: number, { x, y }: { readonly x: number; readonly y: number }) => {
      const tenth = (value: number) => Math.round(value * 10) / 10;
      const others = trail.filter((one) => one.frame !== frame);
      if (others.length >= most) return;
      change([...others, { frame, x: tenth(x), y: tenth(y) }].sort((a, b) => a.frame - b.frame));
      stage.step(1);
    },
    back: () => {
      const last = trail.at(-1);
      change(trail.slice(0, -1));
      if (last !== undefined) stage.goTo(last.frame);
    },
    clear: () => change([]),
  };
};

export type Trail = ReturnType<typeof useTrail>;
