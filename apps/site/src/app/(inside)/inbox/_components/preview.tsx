'use client';
import { causes } from '@ballfirst/library/causes';
import Link from 'next/link';
import { TenBalls } from '../../../../drawings/ten-balls.tsx';
import { inboxWords } from '../../../../words/inbox.ts';
import { painNames, rungNames, spelt } from '../../../../words/names.ts';
import { tallyInWords } from '../../../../words/tally.ts';
import { CloseConcern } from './close-concern.tsx';
import { HandOver } from './hand-over.tsx';
import styles from './inbox.module.css';
import { type Close, type Item, pathOfItem } from './use-inbox.ts';

type Props = {
  item: Item;
  mine: boolean;
  handing: boolean;
  setHanding: (open: boolean) => void;
  onClose: (outcome: Close) => void;
  onHandOver: (to: string, why: string) => void;
};

/** What the student was given last, and how far it has come. */
function Last({ last }: { last: Item['last'] }) {
  if (last === null) return <p className="soft">{inboxWords.noLast}</p>;
  const cause = causes.find(({ id }) => id === last.cause)?.name ?? spelt(last.cause);
  const rung = (rungNames[last.rung] ?? spelt(last.rung)).toLowerCase();
  return (
    <p className="small">
      <span className="soft">{inboxWords.last}</span> {cause}, {rung}
      {last.lastVerdict !== null && `, ${inboxWords.verdicts[last.lastVerdict]}`}
    </p>
  );
}

function Swing({ item }: { item: Extract<Item, { kind: 'swing' }> }) {
  return (
    <>
      {item.poster === null ? (
        <p className="soft">{inboxWords.noPoster}</p>
      ) : (
        <picture>
          <img src={item.poster} alt={inboxWords.poster(item.student.name)} className={styles.poster} />
        </picture>
      )}
      <div>
        <TenBalls tally={item.tally} />
        <p className="small">{tallyInWords(item.tally)}</p>
      </div>
      {item.pain !== 'none' && <p className="notice safety">{painNames[item.pain]}</p>}
      <p>{item.note === '' ? <span className="soft">{inboxWords.noNote}</span> : item.note}</p>
    </>
  );
}

/** Beside the list on a wide screen: what is selected, what came before it, and what can be done. */
export function Preview({ item, mine, handing, setHanding, onClose, onHandOver }: Props) {
  const free = item.claim === null || mine;
  return (
    <section className={styles.preview} aria-label={inboxWords.preview} data-mine={mine}>
      <h2>{item.student.name}</h2>
      {item.kind === 'swing' ? (
        <Swing item={item} />
      ) : (
        <>
          <p>
            <strong>{inboxWords.kinds[item.kind]}</strong>
          </p>
          {item.kind === 'question' && <p className={styles.asked}>{item.words}</p>}
          {item.kind === 'pain' && <p className="notice safety">{inboxWords.painHeld}</p>}
        </>
      )}
      <Last last={item.last} />
      <Link
        href={pathOfItem(item)}
        className="button main"
        aria-label={inboxWords.openFor(inboxWords.kinds[item.kind], item.student.name)}
      >
        {inboxWords.open}
      </Link>
      {item.kind !== 'swing' && free && <CloseConcern onClose={onClose} />}
      {item.kind === 'swing' && mine && (
        <HandOver open={handing} setOpen={setHanding} onHandOver={onHandOver} />
      )}
    </section>
  );
}
