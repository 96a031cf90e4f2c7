'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { inboxWords } from '../../../../words/inbox.ts';

type Props = {
  open: boolean;
  setOpen: (open: boolean) => void;
  onHandOver: (to: string, why: string) => void;
};

/** Gives one's claimed swing to another coach, with a line of why. */
export function HandOver({ open, setOpen, onHandOver }: Props) {
  const [coaches, setCoaches] = useState<Reply<'listCoaches'>['items'] | null>(null);
  const { trouble, run } = useSending();
  const choice = useRef<HTMLSelectElement>(null);
  useEffect(() => {
    if (!open || coaches !== null) return;
    void run(() => answerOf(api.GET('/api/inbox/coaches'))).then(
      (done) => done !== null && setCoaches(done.answer.items),
    );
  }, [open, coaches, run]);
  useEffect(() => {
    if (open && coaches !== null) choice.current?.focus();
  }, [open, coaches]);

  if (!open) {
    return (
      <button type="button" className="small-button" onClick={() => setOpen(true)}>
        {inboxWords.handOver}
      </button>
    );
  }
  const give = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    onHandOver(String(form.get('to') ?? ''), String(form.get('why') ?? '').trim());
    setOpen(false);
  };
  return (
    <form className="stack tight" onSubmit={give} method="post">
      <label className="field">
        <span>{inboxWords.handTo}</span>
        <select ref={choice} name="to" required>
          {coaches?.map(({ membershipId, name }) => (
            <option key={membershipId} value={membershipId}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span>{inboxWords.handWhy}</span>
        <input name="why" required maxLength={200} />
      </label>
      <TroubleNote trouble={trouble} />
      <div className="row">
        <button type="submit" className="small-button" disabled={coaches === null}>
          {inboxWords.handGo}
        </button>
        <button type="button" className="plain small-button" onClick={() => setOpen(false)}>
          {inboxWords.handBack}
        </button>
      </div>
    </form>
  );
}
