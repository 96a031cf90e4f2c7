'use client';
import { useCallback, useEffect, useState } from 'react';
import { type Draft, emptyDraft } from './draft.ts';

const read = (key: string): Draft => {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return typeof kept === 'object' && kept !== null ? { ...emptyDraft, ...kept } : emptyDraft;
  } catch {
    return emptyDraft;
  }
};

const write = (key: string, draft: Draft | null): void => {
  try {
    if (draft === null) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(draft));
  } catch {
    // A browser without room keeps the form only as long as the page is open.
  }
};

/** The form as it stands on this device; `draft` is null until it was looked up. */
export const useDraft = (owner: string) => {
  const key = `ballfirst.send.${owner}`;
  const [draft, setDraft] = useState<Draft | null>(null);
  useEffect(() => setDraft(read(key)), [key]);
  const change = useCallback(
    (next: (draft: Draft) => Draft) => {
      setDraft((now) => {
        if (now === null) return now;
        const changed = next(now);
        write(key, changed);
        return changed;
      });
    },
    [key],
  );
  const forget = useCallback(() => {
    write(key, null);
    setDraft(emptyDraft);
  }, [key]);
  return { draft, change, forget };
};
