'use client';
import { useCallback, useEffect, useState } from 'react';

const read = <T extends object>(key: string, empty: T): T => {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return typeof kept === 'object' && kept !== null ? { ...empty, ...kept } : empty;
  } catch {
    return empty;
  }
};

const write = (key: string, draft: object | null): void => {
  try {
    if (draft === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(draft));
  } catch {
    // A browser without room keeps the form only as long as the page is open.
  }
};

/**
 * A form as it stands on this device; `draft` is null until it was looked up. What another tab writes is taken over, so
 * that two tabs show one form.
 */
export const useKeptDraft = <T extends object>(key: string, empty: T) => {
  const [draft, setDraft] = useState<T | null>(null);
  useEffect(() => {
    setDraft(read(key, empty));
    const heard = (event: StorageEvent) => {
      if (event.key === key || event.key === null) setDraft(read(key, empty));
    };
    window.addEventListener('storage', heard);
    return () => window.removeEventListener('storage', heard);
  }, [key, empty]);
  const change = useCallback(
    (next: (draft: T) => T) => {
      setDraft((now) => {
        if (now === null) return now;
        const changed = next(now);
        if (changed !== now) write(key, changed);
        return changed;
      });
    },
    [key],
  );
  const forget = useCallback(() => {
    write(key, null);
    setDraft(empty);
  }, [key, empty]);
  return { draft, change, forget };
};
