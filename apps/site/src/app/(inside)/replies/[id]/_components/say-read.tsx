'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { When } from '../../../../../times/when.tsx';
import { replyWords } from '../../../../../words/reply.ts';

type Props = { reply: Pick<Reply<'readReply'>, 'id' | 'readAt' | 'saidReadAt'>; isReader: boolean };

/** The student says once to have read it; coaches see when, and when it was opened. */
export function SayRead({ reply, isReader }: Props) {
  const [saidAt, setSaidAt] = useState(reply.saidReadAt);
  const { busy, trouble, run } = useSending();
  const say = async () => {
    const params = { path: { id: reply.id } };
    const done = await run(() => answerOf(api.POST('/api/replies/{id}/said-read', { params })));
    if (done !== null) setSaidAt(done.answer.saidReadAt);
  };
  if (!isReader) {
    return (
      <p className="soft small no-print">
        {reply.readAt === null ? (
          replyWords.notOpened
        ) : (
          <>
            {replyWords.opened} <When at={reply.readAt} />.
          </>
        )}{' '}
        {saidAt !== null && (
          <>
            {replyWords.saidRead} <When at={saidAt} />.
          </>
        )}
      </p>
    );
  }
  return (
    <section className="stack tight no-print" aria-label={replyWords.sayRead}>
      {saidAt === null && (
        <p>
          <button type="button" disabled={busy} onClick={say}>
            {busy ? replyWords.sayingRead : replyWords.sayRead}
          </button>
        </p>
      )}
      <p role="status" className="small">
        {saidAt !== null && (
          <>
            {replyWords.youSaidRead} <When at={saidAt} />.
          </>
        )}
      </p>
      <TroubleNote trouble={trouble} />
    </section>
  );
}
