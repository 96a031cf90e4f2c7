'use client';
import { answerOf, type Body, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';

/** The staff as last read, and what a manager may do to it; each change reads the list again. */
export const useStaff = (first: Reply<'listStaff'>) => {
  const [staff, setStaff] = useState(first);
  const { busy, trouble, run } = useSending();
  const once = useOnceKey();

  const change = (work: () => Promise<unknown>) =>
    run(async () => {
      await work();
      setStaff(await answerOf(api.GET('/api/staff')));
    });
  const invite = (body: Body<'inviteStaff'>) =>
    change(async () => {
      const header = { 'Idempotency-Key': once.keyFor(body) };
      await answerOf(api.POST('/api/staff/invitations', { params: { header }, body }));
      once.answered();
    });
  const revoke = (id: string) =>
    change(() => answerOf(api.DELETE('/api/staff/invitations/{id}', { params: { path: { id } } })));
  const end = (id: string) =>
    change(() => answerOf(api.DELETE('/api/staff/members/{id}', { params: { path: { id } } })));
  return { staff, busy, trouble, invite, revoke, end };
};
