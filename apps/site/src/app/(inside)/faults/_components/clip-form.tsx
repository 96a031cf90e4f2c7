'use client';
import { answerOf, type Reply } from '@ballfirst/contracts/client';
import { causes } from '@ballfirst/library/causes';
import { type FormEvent, useState } from 'react';
import { api } from '../../../../http/browser-api.ts';
import { useSending } from '../../../../http/use-sending.ts';
import { TroubleNote } from '../../../../shell/trouble-note.tsx';
import { faultsWords } from '../../../../words/faults.ts';
import styles from './faults.module.css';

type Clip = Reply<'listTeachingClips'>['items'][number];
type Props = { edited: Clip | null; onClips: (clips: Clip[]) => void; onDone: () => void };

/** A film for a cause: what it is called and where it is. */
export function ClipForm({ edited, onClips, onDone }: Props) {
  const [cause, setCause] = useState(edited?.cause ?? causes[0]?.id ?? '');
  const [title, setTitle] = useState(edited?.title ?? '');
  const [url, setUrl] = useState(edited?.url ?? '');
  const [words, setWords] = useState(edited?.words ?? '');
  const [kept, setKept] = useState(false);
  const { busy, trouble, run } = useSending();
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    const call = { params: { path: { cause } }, body: { title, url, words } };
    const done = await run(() => answerOf(api.PUT('/api/library/teaching-clips/{cause}', call)));
    if (done === null) return;
    setTitle('');
    setUrl('');
    setWords('');
    setKept(true);
    onClips(done.answer.items);
    onDone();
  };
  return (
    <form className="stack" method="post" onSubmit={keep}>
      <div className={styles.form}>
        <label className="field">
          <span>{faultsWords.cause}</span>
          <select value={cause} onChange={(event) => setCause(event.target.value)}>
            {causes.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span>{faultsWords.clipTitle}</span>
          <input required maxLength={120} value={title} onChange={(event) => setTitle(event.target.value)} />
        </label>
        <label className="field">
          <span>{faultsWords.clipUrl}</span>
          <input
            type="url"
            inputMode="url"
            required
            maxLength={500}
            pattern="https://.*"
            placeholder="https://"
            value={url}
            onChange={(event) => setUrl(event.target.value)}
          />
          <span className="hint">{faultsWords.clipUrlHint}</span>
        </label>
        <label className="field">
          <span>{faultsWords.clipWords}</span>
          <textarea
            required
            rows={3}
            maxLength={600}
            value={words}
            onChange={(event) => setWords(event.target.value)}
          />
          <span className="hint">{faultsWords.clipWordsHint}</span>
        </label>
      </div>
      <TroubleNote trouble={trouble} />
      <p className="row">
        <button type="submit" disabled={busy}>
          {busy ? faultsWords.keeping : faultsWords.keep}
        </button>
        <span role="status" className="small">
          {kept && title === '' && faultsWords.kept}
        </span>
      </p>
    </form>
  );
}
