'use client';
import { useCallback, useEffect, useState } from 'react';

/** A yes or no that this device remembers. */
export const useKept = (key: string, first: boolean): [boolean, (value: boolean) => void] => {
  const [value, setValue] = useState(first);
  useEffect(() => {
    const kept = localStorage.getItem(key);
    if (kept !== null) setValue(kept === 'yes');
  }, [key]);
  const set = useCallback(
    (next: boolean) => {
      localStorage.setItem(key, next ? 'yes' : 'no');
      setValue(next);
    },
    [key],
  );
  return [value, set];
};
