'use client';
import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';

export type Spot = { readonly x: number; readonly y: number };
export type PointerActs = {
  /** A point of the screen in pixels of the picture; null while nothing is drawn. */
  toPicture: (at: Spot) => Spot | null;
  /** Whether a mark that can be moved lies there. */
  hits: (at: Spot) => boolean;
  canPlace: boolean;
  zoomed: boolean;
  tap: (at: Spot) => void;
  grab: (at: Spot) => void;
  drag: (at: Spot) => void;
  drop: () => void;
  pan: (dx: number, dy: number) => void;
  zoomAt: (factor: number, about: Spot) => void;
};
type Doing = 'nothing' | 'pressed' | 'dragging' | 'panning' | 'pinching';

/** A press that moves less than this is a tap, in pixels of the screen. */
const tapPx = 6;

const middleOf = (spots: readonly Spot[]): Spot => ({
  x: spots.reduce((sum, { x }) => sum + x, 0) / spots.length,
  y: spots.reduce((sum, { y }) => sum + y, 0) / spots.length,
});
const spread = ([a, b]: readonly Spot[]): number =>
  a === undefined || b === undefined ? 1 : Math.max(1, Math.hypot(a.x - b.x, a.y - b.y));

/**
 * Mouse, pen and fingers on the stage: a tap places, a press that moves drags the mark it began on, two fingers and the wheel zoom, a drag pans what
 * is zoomed. `over` is where the pointer is while it aims or drags, on the screen and in the picture.
 */
export const usePointer = (target: RefObject<HTMLElement | null>, acts: PointerActs) => {
  const latest = useRef(acts);
  useEffect(() => {
    latest.current = acts;
  });
  const down = useRef(new Map<number, Spot>());
  const doing = useRef<Doing>('nothing');
  const start = useRef<Spot>({ x: 0, y: 0 });
  const [over, setOver] = useState<{ screen: Spot; picture: Spot } | null>(null);

  useEffect(() => {
    const element = target.current;
    if (element === null) return;
    const wheel = (event: WheelEvent) => {
      const about = latest.current.toPicture({ x: event.clientX, y: event.clientY });
      // Until the stage is worked with, the wheel scrolls the page, as everywhere.
      const meant = event.ctrlKey || latest.current.zoomed || element.contains(document.activeElement);
      if (about === null || !meant) return;
      event.preventDefault();
      latest.current.zoomAt(Math.exp(-event.deltaY * (event.ctrlKey ? 0.01 : 0.002)), about);
    };
    const touch = (event: TouchEvent) => {
      const one = event.touches[0];
      const at = one === undefined ? null : latest.current.toPicture({ x: one.clientX, y: one.clientY });
      const ours = event.touches.length > 1 || latest.current.zoomed;
      if (ours || (at !== null && latest.current.hits(at))) event.preventDefault();
    };
    element.addEventListener('wheel', wheel, { passive: false });
    element.addEventListener('touchstart', touch, { passive: false });
    return () => {
      element.removeEventListener('wheel', wheel);
      element.removeEventListener('touchstart', touch);
    };
  }, [target]);

  const spotOf = (event: PointerEvent): Spot => ({ x: event.clientX, y: event.clientY });
  const show = (screen: Spot) => {
    const picture = latest.current.toPicture(screen);
    setOver(picture === null ? null : { screen, picture });
  };

  return {
    over,
    onPointerDown: (event: PointerEvent) => {
      if (event.pointerType === 'mouse' && event.button !== 0) return;
      const at = spotOf(event);
      down.current.set(event.pointerId, at);
      if (down.current.size === 2) {
        if (doing.current === 'dragging') latest.current.drop();
        doing.current = 'pinching';
        return;
      }
      start.current = at;
      doing.current = 'pressed';
    },
    onPointerMove: (event: PointerEvent) => {
      const at = spotOf(event);
      const { toPicture, hits, grab, zoomed, canPlace, pan, drag, zoomAt } = latest.current;
      const before = down.current.get(event.pointerId);
      if (before === undefined) {
        if (event.pointerType !== 'touch' && canPlace) show(at);
        return;
      }
      const spots = [...down.current.values()];
      down.current.set(event.pointerId, at);
      const moved = [...down.current.values()];
      const far = Math.hypot(at.x - start.current.x, at.y - start.current.y) > tapPx;
      if (doing.current === 'pressed' && far) {
        const pressed = toPicture(start.current);
        const onMark = pressed !== null && hits(pressed);
        doing.current = onMark ? 'dragging' : zoomed ? 'panning' : 'nothing';
        if (onMark) grab(pressed);
        if (doing.current !== 'nothing') event.currentTarget.setPointerCapture(event.pointerId);
      }
      const picture = toPicture(at);
      const from = toPicture(doing.current === 'pinching' ? middleOf(spots) : before);
      const to = doing.current === 'pinching' ? toPicture(middleOf(moved)) : picture;
      if (from === null || to === null) return;
      if (doing.current === 'dragging' && picture !== null) {
        drag(picture);
        show(at);
      }
      if (doing.current === 'panning' || doing.current === 'pinching') pan(from.x - to.x, from.y - to.y);
      if (doing.current === 'pinching') zoomAt(spread(moved) / spread(spots), to);
    },
    onPointerUp: (event: PointerEvent) => {
      const was = doing.current;
      down.current.delete(event.pointerId);
      if (down.current.size > 0) return;
      doing.current = 'nothing';
      if (was === 'dragging') latest.current.drop();
      const picture = latest.current.toPicture(spotOf(event));
      if (was === 'pressed' && picture !== null) latest.current.tap(picture);
      if (event.pointerType === 'touch') setOver(null);
    },
    onPointerCancel: (event: PointerEvent) => {
      down.current.delete(event.pointerId);
      if (doing.current === 'dragging') latest.current.drop();
      doing.current = 'nothing';
      setOver(null);
    },
    onPointerLeave: () => doing.current === 'nothing' && setOver(null),
  };
};
