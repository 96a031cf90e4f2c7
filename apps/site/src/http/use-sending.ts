'use client';
import { useCallback, useRef, useState } from 'react';
import { type Trouble, troubleOf } from './trouble.ts';

/** One request at a time with its busy state and its trouble in words. `run` answers null when it failed. */
export const useSending = () => {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const atWork = useRef(false);
  const run = useCallback(async <T>(work: () => Promise<T>): Promise<{ answer: T } | null> => {
    if (atWork.current) return null;
    atWork.current = true;
    setBusy(true);
    setTrouble(null);
    try {
      return { answer: await work() };
    } catch (error) {
      setTrouble(troubleOf(error));
      return null;
    } finally {
      atWork.current = false;
      setBusy(false);
    }
  }, []);
  return { busy, trouble, setTrouble, run };
};
