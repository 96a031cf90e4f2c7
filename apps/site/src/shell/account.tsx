'use client';
import { answerOf } from '@ballfirst/contracts/client';
import { api } from '../http/browser-api.ts';
import { useSending } from '../http/use-sending.ts';
import { shellWords } from '../words/shell.ts';
import styles from './shell.module.css';
import { TroubleNote } from './trouble-note.tsx';

/** Who is signed in, and the ways out. */
export function Account({ name, several }: { name: string; several: boolean }) {
  const sending = useSending();
  const signOut = async (everywhere: boolean) => {
    const done = await sending.run(() => answerOf(api.POST('/api/sign-out', { body: { everywhere } })));
    if (done !== null || sending.trouble?.code === 'not-signed-in') window.location.assign('/');
  };
  return (
    <details className={styles.account}>
      <summary aria-label={`${shellWords.account}: ${name}`}>
        <span>{name}</span>
      </summary>
      <div className={styles.accountSheet}>
        {several && <a href="/sign-in?choose=1">{shellWords.changeAcademy}</a>}
        <button type="button" onClick={() => signOut(false)} disabled={sending.busy}>
          {shellWords.signOut}
        </button>
        <button type="button" className="plain" onClick={() => signOut(true)} disabled={sending.busy}>
          {shellWords.signOutEverywhere}
        </button>
        <TroubleNote trouble={sending.trouble} />
      </div>
    </details>
  );
}
