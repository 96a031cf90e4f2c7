'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { type Trouble, troubleOf } from '../../../../../http/trouble.ts';
import type { Comparable } from './choices-of.ts';

/** What the swing on the desk can be compared with; null until it is known. */
export const useComparable = (submissionId: string) => {
  const [items, setItems] = useState<readonly Comparable[] | null>(null);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  useEffect(() => {
    let wanted = true;
    const params = { path: { id: submissionId } };
    answerOf(api.GET('/api/submissions/{id}/comparable', { params })).then(
      (found) => wanted && setItems(found.items),
      (error: unknown) => wanted && setTrouble(troubleOf(error)),
    );
    return () => {
      wanted = false;
    };
  }, [submissionId]);
  return { items, trouble };
};

export type ComparableHere = ReturnType<typeof useComparable>;
