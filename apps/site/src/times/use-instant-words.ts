'use client';
import { useCallback } from 'react';
import { instantFormat } from './instant-format.ts';
import { useZone } from './when.tsx';

/** Puts an instant into words in the reader's zone, for sentences. */
export const useInstantWords = (): ((instant: string) => string) => {
  const timeZone = useZone();
  return useCallback((instant) => instantFormat('moment', timeZone).format(new Date(instant)), [timeZone]);
};
