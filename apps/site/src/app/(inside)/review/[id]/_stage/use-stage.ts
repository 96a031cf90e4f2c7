'use client';
import { useCallback, useState } from 'react';
import { panBy, type Size, type Zoom, zoomAbout, zoomBy } from './view-part.ts';

export const lightSteps = 5;
/** The picture as it was filmed. */
const asFilmed = 1;

type Spot = { readonly x: number; readonly y: number };
type Shown = { readonly frame: number; readonly towards: 1 | -1 };

/** What the stage shows: which frame, which part of it, how bright, and the frame that was really drawn last. */
export const useStage = (size: Size, frames: number) => {
  const whole: Zoom = { times: 1, x: size.widthPx / 2, y: size.heightPx / 2 };
  const [{ frame, towards }, setShown] = useState<Shown>({ frame: 0, towards: 1 });
  const [drawn, setDrawn] = useState(-1);
  const [zoom, setZoom] = useState<Zoom>(whole);
  const [light, setLight] = useState(asFilmed);
  const last = Math.max(0, frames - 1);
  const show = useCallback(
    (to: (now: number) => number) =>
      setShown(({ frame: now, towards: before }) => {
        const next = Math.min(last, Math.max(0, to(now)));
        return { frame: next, towards: next === now ? before : next > now ? 1 : -1 };
      }),
    [last],
  );
  const { widthPx, heightPx } = size;
  return {
    frame,
    towards,
    drawn,
    zoom,
    light,
    last,
    goTo: useCallback((to: number) => show(() => to), [show]),
    step: useCallback((by: number) => show((now) => now + by), [show]),
    closer: useCallback((by: 1 | -1) => setZoom((now) => zoomBy(now, by)), []),
    zoomAt: useCallback(
      (factor: number, about: Spot) => setZoom((now) => zoomAbout({ widthPx, heightPx }, now, factor, about)),
      [widthPx, heightPx],
    ),
    pan: useCallback(
      (dx: number, dy: number) => setZoom((now) => panBy({ widthPx, heightPx }, now, dx, dy)),
      [widthPx, heightPx],
    ),
    whole: useCallback(() => setZoom({ times: 1, x: widthPx / 2, y: heightPx / 2 }), [widthPx, heightPx]),
    centre: useCallback((x: number, y: number) => setZoom((now) => ({ ...now, x, y })), []),
    brighter: useCallback(
      (by: 1 | -1) => setLight((now) => Math.min(lightSteps - 1, Math.max(0, now + by))),
      [],
    ),
    setDrawn,
  };
};

export type StageView = ReturnType<typeof useStage>;
