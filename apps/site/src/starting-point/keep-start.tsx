'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../http/browser-api.ts';
import { useOnceKey } from '../http/use-once-key.ts';
import { useSending } from '../http/use-sending.ts';
import { TroubleNote } from '../shell/trouble-note.tsx';
import { replyDeskWords } from '../words/reply-desk.ts';

/** Keeps a sent reply for the next player with the same cause. */
export function KeepStart({ replyId }: { replyId: string }) {
  const [kept, setKept] = useState(false);
  const sending = useSending();
  const once = useOnceKey();
  const keep = async () => {
    const params = { path: { id: replyId }, header: { 'Idempotency-Key': once.keyFor(replyId) } };
    const done = await sending.run(() => answerOf(api.POST('/api/replies/{id}/starting-point', { params })));
    if (done === null) return;
    once.answered();
    setKept(true);
  };
  return (
    <div className="stack tight no-print">
      <p role="status">
        {kept ? (
          replyDeskWords.keptStart
        ) : (
          <button type="button" disabled={sending.busy} onClick={keep}>
            {replyDeskWords.keepStart}
          </button>
        )}
      </p>
      <TroubleNote trouble={sending.trouble} />
    </div>
  );
}
