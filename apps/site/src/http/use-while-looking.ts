'use client';
import { useEffect } from 'react';

/** Calls `ask` at once, when the page comes to the front, and every so often while it is there. */
export const useWhileLooking = (ask: () => Promise<void>, everyMs: number): void => {
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') void ask();
    };
    void ask();
    const timer = setInterval(look, everyMs);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [ask, everyMs]);
};
