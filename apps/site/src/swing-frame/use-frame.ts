'use client';
import { type RefObject, useEffect, useRef, useState } from 'react';
import { drawFrame } from './draw-frame.ts';

/** `drawing`: the poster stands in; `player`: the browser's own video shows the frame; `failed`: the poster stays. */
export type FrameState = 'drawing' | 'drawn' | 'player' | 'failed';

/** Shows one frame on a canvas; a browser that cannot decode it gets the video itself, held at that moment. */
export const useFrame = (
  rendition: string,
  timeS: number,
): { canvas: RefObject<HTMLCanvasElement | null>; state: FrameState; failed: () => void } => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [state, setState] = useState<FrameState>('drawing');
  useEffect(() => {
    const target = canvas.current;
    if (target === null) return;
    const wanted = new AbortController();
    const gone = () => wanted.signal.aborted;
    drawFrame(target, rendition, timeS, wanted.signal)
      .then((drawn) => !gone() && setState(drawn ? 'drawn' : 'player'))
      .catch(() => !gone() && setState('player'));
    return () => wanted.abort();
  }, [rendition, timeS]);
  return { canvas, state, failed: () => setState('failed') };
};
