'use client';
import { useEffect, useState } from 'react';
import { useReader } from './reader.tsx';

/** The instant now in milliseconds, renewed every `everyMs`; the page's own instant until it runs in the browser. */
export const useNow = (everyMs = 30_000): number => {
  const { renderedAt } = useReader();
  const [now, setNow] = useState(() => Date.parse(renderedAt));
  useEffect(() => {
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), everyMs);
    return () => clearInterval(timer);
  }, [everyMs]);
  return now;
};
