'use client';
import { useEffect, useRef, useState } from 'react';

/** What changes the inbox; `missed` says that something may have been lost. */
const kinds = [
  'missed',
  'clip.prepared',
  'submission.sent',
  'submission.corrected',
  'submission.claimed',
  'submission.released',
  'submission.handed-over',
  'submission.lapsed',
  'submission.pain-seen',
  'submission.film-again',
  'reply.sent',
  'concern.raised',
  'concern.claimed',
  'concern.released',
  'concern.closed',
] as const;

/** Many things that happen together are read once. */
const restMs = 250;
/** A stream that was refused (signed out, too many pages) is tried again after this. */
const againMs = 60_000;
/** Without the stream the list is asked for so often; with it only in case of doubt. */
const pollMs = { live: 120_000, apart: 15_000 } as const;

/** Calls `renew` when something happens in the academy, by the stream of events; without it, every quarter of a minute. */
export const useLive = (renew: () => Promise<void>): 'live' | 'apart' => {
  const [state, setState] = useState<'live' | 'apart'>('apart');
  const latest = useRef(renew);
  useEffect(() => {
    latest.current = renew;
  });
  useEffect(() => {
    let stream: EventSource | null = null;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let again: ReturnType<typeof setTimeout> | undefined;
    const soon = () => {
      clearTimeout(timer);
      timer = setTimeout(() => void latest.current(), restMs);
    };
    const follow = () => {
      const next = new EventSource('/api/live');
      stream = next;
      next.addEventListener('open', () => {
        setState('live');
        soon();
      });
      // A broken line is tried again by the browser itself; one that was refused is not.
      next.addEventListener('error', () => {
        setState('apart');
        if (next.readyState === EventSource.CLOSED) again = setTimeout(follow, againMs);
      });
      for (const kind of kinds) next.addEventListener(kind, soon);
    };
    follow();
    return () => {
      clearTimeout(timer);
      clearTimeout(again);
      stream?.close();
    };
  }, []);
  useEffect(() => {
    const timer = setInterval(() => void latest.current(), pollMs[state]);
    return () => clearInterval(timer);
  }, [state]);
  return state;
};
