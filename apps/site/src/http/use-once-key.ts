'use client';
import { useCallback, useRef } from 'react';
import { newKey } from './new-key.ts';

/**
 * The Idempotency-Key of a form: the same for the same body until it was answered, so that a second try after a lost
 * answer cannot act twice; another body gets another key.
 */
export const useOnceKey = () => {
  const kept = useRef<{ key: string; body: string } | null>(null);
  const keyFor = useCallback((body: unknown): string => {
    const text = JSON.stringify(body ?? null);
    if (kept.current?.body !== text) kept.current = { key: newKey(), body: text };
    return kept.current.key;
  }, []);
  const answered = useCallback(() => {
    kept.current = null;
  }, []);
  return { keyFor, answered };
};
