'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';

export type Submission = Reply<'readSubmission'>;
export type FilmAgainReason =
  | 'club-out-of-picture'
  | 'too-dark'
  | 'camera-moves'
  | 'wrong-angle'
  | 'cut-short'
  | 'too-far';

/** The submission on the desk and what can be done with it as a whole. */
export const useClaim = (first: Submission, membershipId: string) => {
  const [submission, setSubmission] = useState(first);
  const sending = useSending();
  const path = { id: first.id };
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
