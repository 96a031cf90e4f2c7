'use client';
import { useCallback, useEffect, useRef, useState } from 'react';
import { frameDue, type Stretch, stretchAround } from './slow-play.ts';
import type { StageView } from './use-stage.ts';

type Playing = 'no' | 'held' | 'loop';

/** Slow playing while something is held down, and the loop around impact. A frame waits until the one before is drawn. */
export const usePlay = (stage: StageView, timesS: readonly number[], impact: number | null) => {
  const [playing, setPlaying] = useState<Playing>('no');
  const latest = useRef({ stage, timesS, impact });
  useEffect(() => {
    latest.current = { stage, timesS, impact };
  });

  useEffect(() => {
    if (playing === 'no') return;
    const { stage: first, timesS: times, impact: at } = latest.current;
    const stretch: Stretch | null = playing === 'loop' ? stretchAround(times, at ?? first.frame) : null;
    const inside = stretch === null || (first.frame >= stretch.from && first.frame <= stretch.to);
    const start = inside || stretch === null ? first.frame : stretch.from;
    let begun: { frame: number; atMs: number } | null = null;
    let next = requestAnimationFrame(function tick(nowMs) {
      const { frame, drawn, goTo } = latest.current.stage;
      begun ??= { frame: start, atMs: nowMs };
      if (drawn === frame) goTo(frameDue(times, begun, nowMs, stretch));
      next = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(next);
  }, [playing]);

  return {
    playing,
    hold: useCallback((on: boolean) => setPlaying((now) => (on ? 'held' : now === 'held' ? 'no' : now)), []),
    loop: useCallback(() => setPlaying((now) => (now === 'loop' ? 'no' : 'loop')), []),
    stop: useCallback(() => setPlaying('no'), []),
  };
};

export type Play = ReturnType<typeof usePlay>;
