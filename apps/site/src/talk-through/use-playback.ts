'use client';
import { type RefObject, useEffect, useRef, useState } from 'react';

/** A recording that is played: how far it is, and whether it runs. The sound leads, the picture follows it. */
export const usePlayback = (durationMs: number) => {
  const audio: RefObject<HTMLAudioElement | null> = useRef(null);
  const [atMs, setAtMs] = useState(0);
  const [playing, setPlaying] = useState(false);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    if (!playing) return;
    let next = requestAnimationFrame(function follow() {
      const element = audio.current;
      if (element !== null) setAtMs(Math.min(durationMs, element.currentTime * 1000));
      next = requestAnimationFrame(follow);
    });
    return () => cancelAnimationFrame(next);
  }, [playing, durationMs]);
  const seek = (toMs: number) => {
    setAtMs(toMs);
    if (audio.current !== null) audio.current.currentTime = toMs / 1000;
  };
  return {
    audio,
    atMs,
    playing,
    failed,
    seek,
    toggle: () => {
      const element = audio.current;
      if (element === null) return;
      if (playing) return element.pause();
      if (atMs >= durationMs - 50) seek(0);
      element.play().catch(() => setFailed(true));
    },
    events: {
      onPlay: () => setPlaying(true),
      onPause: () => setPlaying(false),
      onEnded: () => {
        setPlaying(false);
        setAtMs(durationMs);
      },
      onError: () => setFailed(true),
    },
  };
};
