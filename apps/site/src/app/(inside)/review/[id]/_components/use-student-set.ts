'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';

export type StudentSet = Reply<'readStudentSet'>;

/**
 * What is known of the student's set beside the clip on the desk. It comes along where a clubhead was marked over frames
 * before; else it is read when the first is marked. Without it a swing stands alone, which is said.
 */
export const useStudentSet = (submissionId: string, first: StudentSet | null) => {
  const [set, setSet] = useState(first);
  const [asked, setAsked] = useState(first !== null);
  const renew = useCallback(async () => {
    const params = { path: { id: submissionId } };
    const found = await answerOf(api.GET('/api/submissions/{id}/set', { params })).catch(() => null);
    if (found !== null) setSet(found);
  }, [submissionId]);
  useEffect(() => {
    if (asked && set === null) void renew();
  }, [asked, set, renew]);
  return {
    set,
    /** A clubhead is marked over frames: the set is needed. */
    need: useCallback(() => setAsked(true), []),
    /** Something of it changed: a line test was noted. Nothing where nobody needs it. */
    renew: useCallback(async () => {
      if (asked) await renew();
    }, [asked, renew]),
  };
};

export type StudentSetHere = ReturnType<typeof useStudentSet>;
