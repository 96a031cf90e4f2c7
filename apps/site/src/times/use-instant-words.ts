'use client';
import { useCallback } from 'react';
import { useZone } from './when.tsx';

/** Puts an instant into words in the reader's zone, for sentences. */
export const useInstantWords = (): ((instant: string) => string) => {
  const timeZone = useZone();
  return useCallback(
    (instant) =>
      new Intl.DateTimeFormat('en-GB', {
        weekday: 'short',
        day: 'numeric',
        month: 'short',
        hour: '2-digit',
        minute: '2-digit',
        hourCycle: 'h23',
        timeZone,
      }).format(new Date(instant)),
    [timeZone],
  );
};
