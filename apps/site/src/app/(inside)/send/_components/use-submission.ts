'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { type Trouble, troubleOf } from '../../../../http/trouble.ts';

export type Submission = Reply<'readSubmission'>;

const everyMs = 2000;

/** A submission watched while it is being prepared. */
export const useSubmission = (id: string, first: Submission | null, watch: boolean) => {
  const [submission, setSubmission] = useState(first);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const moving = submission === null || submission.status === 'preparing' || watch;
  const ask = useCallback(async () => {
    try {
      setSubmission(await answerOf(api.GET('/api/submissions/{id}', { params: { path: { id } } })));
      setTrouble(null);
    } catch (error) {
      setTrouble(troubleOf(error));
    }
  }, [id]);
  useEffect(() => {
    if (!moving) return;
    void ask();
    const timer = setInterval(ask, everyMs);
    return () => clearInterval(timer);
  }, [moving, ask]);
  return { submission, setSubmission, trouble, renew: ask };
};
