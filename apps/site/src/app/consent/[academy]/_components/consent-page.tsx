'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useEffect, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useLinkToken } from '../../../../http/link-token.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { guardianWords } from '../../../../words/guardian.ts';
import { AgreeForm } from './agree-form.tsx';
import { Withdraw } from './withdraw.tsx';

/** What the link of a letter opens: the text, the choices, and the way back out. */
export function ConsentPage({ academy }: { academy: string }) {
  const token = useLinkToken();
  const [consent, setConsent] = useState<Reply<'readConsent'> | null>(null);
  const { busy, trouble, run } = useSending();
  useEffect(() => {
    if (token === undefined || token === null) return;
    void run(() => answerOf(api.POST('/api/consent/read', { body: { academy, token } }))).then(
      (done) => done !== null && setConsent(done.answer),
    );
  }, [token, academy, run]);

  if (token === null) return <p>{guardianWords.noLink}</p>;
  if (token === undefined || consent === null) {
    return trouble === null ? (
      <p role="status">{guardianWords.opening}</p>
    ) : (
      <TroubleNote trouble={trouble} />
    );
  }
  const link = { academy, token };
  const give = async (purposes: { quality: boolean; teaching: boolean }) => {
    const body = { ...link, version: consent.text.version, purposes };
    const done = await run(() => answerOf(api.POST('/api/consent/give', { body })));
    if (done !== null) setConsent(done.answer);
  };
  const withdraw = async () => {
    const done = await run(() => answerOf(api.POST('/api/consent/withdraw', { body: link })));
    if (done !== null) setConsent(done.answer);
  };
  return (
    <>
      <p>
        {guardianWords.hello(consent.guardianName)}.{' '}
        {guardianWords.lead(consent.studentName, consent.academyName)}
      </p>
      <div role="status">
        {consent.state === 'given' && <p className="notice good">{guardianWords.given}</p>}
        {consent.state === 'withdrawn' && <p className="notice look">{guardianWords.withdrawn}</p>}
      </div>
      <AgreeForm key={consent.state} consent={consent} busy={busy} onGive={give} />
      <TroubleNote trouble={trouble} />
      {consent.state === 'given' && <Withdraw busy={busy} onWithdraw={withdraw} />}
      <p className="notice safety">{guardianWords.supervised}</p>
      <p>{guardianWords.contact(consent.safeguardContact)}</p>
    </>
  );
}
