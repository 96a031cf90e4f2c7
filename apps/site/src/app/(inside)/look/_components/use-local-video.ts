'use client';
import { useCallback, useEffect, useRef, useState } from 'react';
import { lookAtClip } from '../../../../clip-check/look-at-clip.ts';

export type Speed = '1' | '0.5' | '0.25' | '0.125';

/** Pictures a second until the file has told its own: what phones film at least. */
const usualFps = 30;
const atRest = { timeS: 0, durationS: 0, frame: 0, playing: false, failed: false };

/** A video on this device: slow, stopped in the middle of each picture so that a step never lands between two. */
export const useLocalVideo = (file: File) => {
  const video = useRef<HTMLVideoElement>(null);
  const fps = useRef(usualFps);
  const [state, setState] = useState(atRest);
  const [speed, setSpeed] = useState<Speed>('0.25');

  useEffect(() => {
    let wanted = true;
    void lookAtClip(file).then((look) => {
      if (wanted && look !== null && look.fps > 0) fps.current = look.fps;
    });
    return () => {
      wanted = false;
    };
  }, [file]);
  useEffect(() => {
    if (video.current !== null) video.current.playbackRate = Number(speed);
  }, [speed]);

  const follow = useCallback(() => {
    const element = video.current;
    if (element === null) return;
    const { currentTime, duration, paused } = element;
    setState((now) => ({
      ...now,
      timeS: currentTime,
      durationS: Number.isFinite(duration) ? duration : 0,
      frame: Math.floor(currentTime * fps.current + 1e-6),
      playing: !paused,
    }));
  }, []);
  // `timeupdate` comes four times a second: the counter follows each picture instead while the film runs.
  useEffect(() => {
    if (!state.playing) return;
    let asked = requestAnimationFrame(function turn() {
      follow();
      asked = requestAnimationFrame(turn);
    });
    return () => cancelAnimationFrame(asked);
  }, [state.playing, follow]);

  const seek = (timeS: number) => {
    if (video.current === null) return;
    video.current.currentTime = timeS;
    // Told at once: a slider that still shows the old place would ask for it again when it is let go.
    setState((now) => ({ ...now, timeS, frame: Math.floor(timeS * fps.current + 1e-6) }));
  };
  const step = (by: 1 | -1) => {
    const element = video.current;
    if (element === null) return;
    element.pause();
    const frame = Math.floor(element.currentTime * fps.current + 1e-6) + by;
    const last = Math.max(0, Math.floor(element.duration * fps.current) - 1);
    seek((Math.min(last, Math.max(0, frame)) + 0.5) / fps.current);
  };
  const toggle = () => {
    const element = video.current;
    if (element === null) return;
    element.playbackRate = Number(speed);
    if (element.paused) void element.play().catch(() => undefined);
    else element.pause();
  };
  const events = {
    onLoadedMetadata: () => {
      if (video.current !== null) video.current.playbackRate = Number(speed);
      follow();
    },
    ...{ onPlay: follow, onPause: follow, onSeeked: follow, onTimeUpdate: follow },
    onError: () => setState((now) => ({ ...now, failed: true })),
  };
  return { video, state, speed, setSpeed, toggle, step, seek, events };
};
