'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { troubleOf } from '../../../../../http/trouble.ts';
import { useSending } from '../../../../../http/use-sending.ts';

export type Submission = Reply<'readSubmission'>;
export type FilmAgainReason =
  | 'club-out-of-picture'
  | 'too-dark'
  | 'camera-moves'
  | 'wrong-angle'
  | 'cut-short'
  | 'too-far';

/** A claim lapses after half an hour alone; an open desk renews it well before. */
const renewEveryMs = 5 * 60_000;

/** The submission on the desk and what can be done with it as a whole. */
export const useClaim = (first: Submission, membershipId: string) => {
  const [submission, setSubmission] = useState(first);
  const sending = useSending();
  const path = { id: first.id };
  const { setTrouble } = sending;
  const mine = submission.status === 'waiting' && submission.claim?.membershipId === membershipId;

  // Renewed while the desk is looked at, and at once when it is looked at again: what was left alone may be another's.
  useEffect(() => {
    if (!mine) return;
    const renew = async () => {
      if (document.hidden) return;
      const params = { path: { id: first.id } };
      try {
        const { claim, version } = await answerOf(api.POST('/api/submissions/{id}/claim', { params }));
        setSubmission((now) => ({ ...now, claim, version }));
      } catch (error) {
        const found = troubleOf(error);
        // Without a connection the claim goes on until it runs out; an answer says that it is no longer ours.
        if (found.code === null || found.code === 'busy') return;
        setTrouble(found);
        if (found.code === 'not-signed-in') return;
        const read = api.GET('/api/submissions/{id}', { params });
        await answerOf(read).then(setSubmission, () => undefined);
      }
    };
    const seen = () => void renew();
    const timer = setInterval(seen, renewEveryMs);
    document.addEventListener('visibilitychange', seen);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', seen);
    };
  }, [mine, first.id, setTrouble]);

  const act = async (ask: () => Promise<Submission>) => {
    const done = await sending.run(ask);
    if (done !== null) setSubmission(done.answer);
    return done !== null;
  };
  return {
    submission,
    setSubmission,
    mine: submission.claim?.membershipId === membershipId,
    busy: sending.busy,
    trouble: sending.trouble,
    claim: () => act(() => answerOf(api.POST('/api/submissions/{id}/claim', { params: { path } }))),
    release: () => act(() => answerOf(api.POST('/api/submissions/{id}/release', { params: { path } }))),
    painSeen: () => act(() => answerOf(api.POST('/api/submissions/{id}/pain-seen', { params: { path } }))),
    filmAgain: (reason: FilmAgainReason) =>
      act(() =>
        answerOf(api.POST('/api/submissions/{id}/film-again', { params: { path }, body: { reason } })),
      ),
  };
};
