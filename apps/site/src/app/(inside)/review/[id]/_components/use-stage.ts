'use client';
import { useCallback, useState } from 'react';
import { type Size, type Zoom, zoomBy } from './view-part.ts';

/** What the stage shows: which frame, which part of it, and the frame that was really drawn last. */
export const useStage = (size: Size, frames: number) => {
  const [frame, setFrame] = useState(0);
  const [drawn, setDrawn] = useState(-1);
  const [zoom, setZoom] = useState<Zoom>({ times: 1, x: size.widthPx / 2, y: size.heightPx / 2 });
  const last = Math.max(0, frames - 1);
  const goTo = useCallback((to: number) => setFrame(Math.min(last, Math.max(0, to))), [last]);
  const step = useCallback((by: number) => setFrame((now) => Math.min(last, Math.max(0, now + by))), [last]);
  const closer = useCallback((by: 1 | -1) => setZoom((now) => zoomBy(now, by)), []);
  const centre = useCallback((x: number, y: number) => setZoom((now) => ({ ...now, x, y })), []);
  return { frame, drawn, zoom, goTo, step, closer, centre, setDrawn };
};
