'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../http/browser-api.ts';
import { useLinkToken } from '../../../http/link-token.ts';
import { useSending } from '../../../http/use-sending.ts';
import { TroubleNote } from '../../../shell/trouble-note.tsx';
import { stopWords } from '../../../words/settings.ts';

export function StopForm() {
  const token = useLinkToken();
  const [done, setDone] = useState(false);
  const sending = useSending();
  if (token === undefined) return null;
  if (token === null) return <p>{stopWords.noLink}</p>;
  if (done) return <p role="status">{stopWords.done}</p>;

  const stop = async () => {
    const path = { token };
    const ended = await sending.run(() =>
      answerOf(api.POST('/api/reminders/stop/{token}', { params: { path } })),
    );
    if (ended !== null) setDone(true);
  };
  return (
    <div className="stack">
      <p>{stopWords.lead}</p>
      <TroubleNote trouble={sending.trouble} />
      <button type="button" className="main" disabled={sending.busy} onClick={stop}>
        {sending.busy ? stopWords.busy : stopWords.go}
      </button>
    </div>
  );
}
