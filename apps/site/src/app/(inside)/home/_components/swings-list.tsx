import Link from 'next/link';
import { When } from '../../../../times/when.tsx';
import { filmWords } from '../../../../words/film.ts';
import { homeWords } from '../../../../words/home.ts';
import { clubNames } from '../../../../words/names.ts';
import { tallyInWords } from '../../../../words/tally.ts';
import styles from './home.module.css';
import type { HomeState } from './use-home.ts';

type Swing = HomeState['latest'][number];

function Preparing({ swing }: { swing: Swing }) {
  const clip = swing.clips.find(({ status }) => status !== 'ready') ?? swing.clips[0];
  if (clip === undefined || clip.status === 'uploading')
    return <p className="small">{homeWords.uploading}</p>;
  return (
    <div>
      <p className="small">{homeWords.preparing(clip.percent)}</p>
      <progress max={100} value={clip.percent} aria-label={homeWords.preparingLabel} />
    </div>
  );
}

function PutRight({ swing }: { swing: Swing }) {
  const refusal = swing.clips.find((clip) => clip.refusal !== null)?.refusal ?? null;
  return (
    <div className="notice look stack tight">
      {swing.status === 'film-again' && <strong>{homeWords.filmAgain}</strong>}
      {refusal !== null && <p>{refusal.words}</p>}
      <p>
        <Link
          href={`/send?for=${swing.id}`}
          className="button"
          aria-label={homeWords.chooseOtherFor(clubNames[swing.club].toLowerCase())}
        >
          {homeWords.chooseOther}
        </Link>
      </p>
      <p>
        <Link href="/filming" className={styles.inline}>
          {filmWords.guide}
        </Link>
      </p>
    </div>
  );
}

function State({ swing }: { swing: Swing }) {
  switch (swing.status) {
    case 'preparing':
      return <Preparing swing={swing} />;
    case 'needs-clip':
    case 'film-again':
      return <PutRight swing={swing} />;
    case 'waiting':
      return (
        <p className="small">
          {homeWords.waiting} {homeWords.answerBy} <When at={swing.answerBy} />.{' '}
          <Link
            href={`/send?for=${swing.id}`}
            className={styles.inline}
            aria-label={homeWords.correctFor(clubNames[swing.club].toLowerCase())}
          >
            {homeWords.correct}
          </Link>
        </p>
      );
    case 'answered':
      return (
        <p className="small">
          {homeWords.answered}{' '}
          {swing.replyId !== null && (
            <Link href={`/replies/${swing.replyId}`} className={styles.inline}>
              {homeWords.readReply}
            </Link>
          )}
        </p>
      );
    case 'withdrawn':
      return <p className="small">{homeWords.withdrawn}</p>;
  }
}

/** The latest swings, each with where it is now. */
export function SwingsList({ swings }: { swings: readonly Swing[] }) {
  return (
    <section className="stack tight ruled" aria-labelledby="swings-title">
      <h2 id="swings-title">{homeWords.swingsTitle}</h2>
      {swings.length === 0 && <p className="soft">{homeWords.noSwings}</p>}
      <ul className={styles.lines} aria-live="polite">
        {swings.map((swing) => (
          <li key={swing.id} className={styles.swing}>
            <div className="row apart">
              <strong>{clubNames[swing.club]}</strong>
              <span className="soft small">
                <When at={swing.sentAt} />
              </span>
            </div>
            <p className="small soft">{tallyInWords(swing.tally, 'student')}</p>
            <State swing={swing} />
          </li>
        ))}
      </ul>
    </section>
  );
}
