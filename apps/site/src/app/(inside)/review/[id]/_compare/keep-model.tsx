'use client';
import { answerOf } from '@ballfirst/contracts/client';
import Link from 'next/link';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../../http/browser-api.ts';
import { useOnceKey } from '../../../../../http/use-once-key.ts';
import { useSending } from '../../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../../shell/trouble-note.tsx';
import { collectionWords } from '../../../../../words/compare.ts';

/** Takes the clip on the stage into the academy's collection, with what the player allowed. For managers. */
export function KeepModel({ clipId }: { clipId: string }) {
  const [kept, setKept] = useState(false);
  const sending = useSending();
  const once = useOnceKey();
  const keep = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const fields = new FormData(event.currentTarget);
    const text = (name: string) => String(fields.get(name) ?? '');
    const body = { name: text('name'), permission: text('permission'), permittedOn: text('permittedOn') };
    const params = { path: { id: clipId }, header: { 'Idempotency-Key': once.keyFor(body) } };
    const done = await sending.run(() => answerOf(api.POST('/api/clips/{id}/model-swing', { params, body })));
    if (done === null) return;
    once.answered();
    setKept(true);
  };
  if (kept)
    return (
      <p role="status" className="small">
        {collectionWords.keptNow} <Link href="/model-swings">{collectionWords.toCollection}</Link>
      </p>
    );
  return (
    <details className="no-print">
      <summary>{collectionWords.keepTitle}</summary>
      <form className="stack" onSubmit={keep}>
        <p className="small">{collectionWords.keepLead}</p>
        <label className="field">
          <span>{collectionWords.name}</span>
          <input name="name" required maxLength={80} />
        </label>
        <label className="field">
          <span>{collectionWords.permissionWords}</span>
          <textarea name="permission" required minLength={10} maxLength={400} rows={3} />
        </label>
        <label className="field">
          <span>{collectionWords.permittedOn}</span>
          <input name="permittedOn" type="date" required />
        </label>
        <TroubleNote trouble={sending.trouble} />
        <p>
          <button type="submit" disabled={sending.busy}>
            {collectionWords.keep}
          </button>
        </p>
      </form>
    </details>
  );
}
