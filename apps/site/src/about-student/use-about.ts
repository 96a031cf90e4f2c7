'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useCallback, useEffect, useState } from 'react';
import { api } from '../http/browser-api.ts';
import { useSending } from '../http/use-sending.ts';

export type About = Reply<'readAbout'>;

/** What is known about a student: given by the page, or read once the page stands. */
export const useAbout = (studentId: string, first: About | null) => {
  const [about, setAbout] = useState(first);
  const { trouble, run } = useSending();
  const renew = useCallback(async () => {
    const params = { path: { id: studentId } };
    const done = await run(() => answerOf(api.GET('/api/students/{id}/about', { params })));
    if (done !== null) setAbout(done.answer);
  }, [studentId, run]);
  useEffect(() => {
    if (first === null) void renew();
  }, [first, renew]);
  return { about, setAbout, renew, trouble };
};
