'use client';
import { useCallback, useEffect, useRef, useState } from 'react';

export type RecorderTrouble = 'denied' | 'none' | 'unsupported';
type State = 'idle' | 'asking' | 'recording';
export type Recording = { readonly blob: Blob; readonly durationMs: number };

/** Opus in what this browser writes. */
const kinds = ['audio/webm;codecs=opus', 'audio/mp4;codecs=opus', 'audio/mp4', 'audio/ogg;codecs=opus'];
/** Speech in Opus is clear at that rate. Common practice, no source. */
const bitsPerSecond = 32_000;
const longestMs = 180_000;
const tickMs = 200;

type Running = {
  readonly recorder: MediaRecorder;
  readonly stream: MediaStream;
  readonly begunMs: number;
  readonly parts: Blob[];
};
const hush = ({ stream }: Pick<Running, 'stream'>) => {
  for (const track of stream.getTracks()) track.stop();
};
const troubleOf = (error: unknown): RecorderTrouble =>
  error instanceof DOMException && error.name === 'NotFoundError' ? 'none' : 'denied';

/** The voice of the coach from the microphone, three minutes at most. `onDone` gets it when it stops and is kept. */
export const useRecorder = (onDone: (recording: Recording) => void) => {
  const [state, setState] = useState<State>('idle');
  const [trouble, setTrouble] = useState<RecorderTrouble | null>(null);
  const [elapsedMs, setElapsedMs] = useState(0);
  const running = useRef<Running | null>(null);
  const gone = useRef(false);
  const done = useRef(onDone);
  useEffect(() => {
    done.current = onDone;
  });

  const stop = useCallback((keep: boolean) => {
    const now = running.current;
    if (now === null) return;
    running.current = null;
    const durationMs = Math.round(Math.min(longestMs, performance.now() - now.begunMs));
    now.recorder.addEventListener('stop', () => {
      hush(now);
      if (keep) done.current({ blob: new Blob(now.parts, { type: now.recorder.mimeType }), durationMs });
    });
    now.recorder.stop();
    if (!gone.current) setState('idle');
  }, []);
  useEffect(() => {
    if (state !== 'recording') return;
    const timer = setInterval(() => {
      const ms = performance.now() - (running.current?.begunMs ?? performance.now());
      setElapsedMs(Math.min(longestMs, ms));
      if (ms >= longestMs) stop(true);
    }, tickMs);
    return () => clearInterval(timer);
  }, [state, stop]);
  useEffect(() => {
    gone.current = false;
    return () => {
      gone.current = true;
      stop(false);
    };
  }, [stop]);

  const start = useCallback(async () => {
    setTrouble(null);
    const mimeType =
      typeof MediaRecorder === 'undefined' ? undefined : kinds.find(MediaRecorder.isTypeSupported);
    if (mimeType === undefined || !navigator.mediaDevices) return setTrouble('unsupported');
    setState('asking');
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
      if (gone.current) return hush({ stream });
      const recorder = new MediaRecorder(stream, { mimeType, audioBitsPerSecond: bitsPerSecond });
      const parts: Blob[] = [];
      recorder.addEventListener('dataavailable', ({ data }) => parts.push(data));
      recorder.start(1000);
      running.current = { recorder, stream, begunMs: performance.now(), parts };
      setElapsedMs(0);
      setState('recording');
    } catch (error) {
      setState('idle');
      setTrouble(troubleOf(error));
    }
  }, []);
  /** Milliseconds since the recording began; null while none runs. */
  const now = useCallback(
    (): number | null => (running.current === null ? null : performance.now() - running.current.begunMs),
    [],
  );
  return { state, trouble, elapsedMs, start, stop, now };
};
