'use client';
import type { Place } from '@ballfirst/swing/marks/place';
import { useEffect, useRef, useState } from 'react';
import { learningWords } from '../../../../../words/learning.ts';
import { nextInWords, placeOfNext } from '../../../../../words/next-evidence.ts';
import { reviewWords } from '../../../../../words/review.ts';
import type { Evidence } from '../_marking/marking.ts';
import styles from './evidence.module.css';

type Props = {
  evidence: Evidence;
  /** Whether anything is marked or seen yet. */
  begun: boolean;
  chosen: string | null;
  /** The cause that was named while the order was held back. */
  named: string | null;
  /** The order has just come in place of the question that held it back: whoever reads by keys goes on here. */
  arrived: boolean;
  canWork: boolean;
  busy: boolean;
  onChoose: (cause: string) => void;
  onPlace: (place: Place) => void;
};
type Cause = Evidence['causes'][number];

const shownAtOnce = 4;

/** What is most worth doing next, or that it is enough. */
function NextLine({ evidence, canWork, onPlace }: Pick<Props, 'evidence' | 'canWork' | 'onPlace'>) {
  const { next } = evidence;
  if (next === null) return <p className={styles.enough}>{reviewWords.enough}</p>;
  const place = placeOfNext(next);
  return (
    <p className={styles.next}>
      <span>{reviewWords.next(nextInWords(next))}</span>
      {place !== null && (
        <button type="button" className="small-button" disabled={!canWork} onClick={() => onPlace(place)}>
          {reviewWords.placeIt}
        </button>
      )}
    </p>
  );
}

/** The ranked causes with what speaks for each in words; the figures are folded. */
export function CauseList(props: Props) {
  const { evidence, begun, chosen, named, arrived, canWork, busy, onChoose, onPlace } = props;
  const [all, setAll] = useState(false);
  const { causes, first } = evidence;
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (arrived) title.current?.focus({ preventScroll: true });
  }, [arrived]);
  // One's own choice is shown wherever it stands.
  const shown = causes.filter(
    ({ causeId }, index) => all || index < shownAtOnce || causeId === chosen || causeId === named,
  );
  const line = (cause: Cause) => (
    <li
      key={cause.causeId}
      className={styles.cause}
      data-chosen={cause.causeId === chosen}
      data-faint={cause.causeId !== first}
    >
      <h3>{cause.name}</h3>
      {cause.causeId === named && (
        <p className="small">{learningWords.namedBefore(causes.indexOf(cause) + 1, causes.length)}</p>
      )}
      {cause.factors.length > 0 && (
        <ul className={styles.factors}>
          {cause.factors.map((factor) => (
            <li key={factor}>{factor}</li>
          ))}
        </ul>
      )}
      {cause.unseen !== null && <p className="small soft">{cause.unseen}</p>}
      <div className="row apart">
        <details className="small">
          <summary>{reviewWords.figures}</summary>
          <p>
            {reviewWords.probability}: {Math.round(cause.probability * 100)} %. {reviewWords.share}:{' '}
            {Math.round(cause.share * 100)} %.
          </p>
        </details>
        {cause.causeId === chosen ? (
          <strong className={styles.chosen}>{reviewWords.chosenCause}</strong>
        ) : (
          <button
            type="button"
            className="small-button"
            disabled={!canWork || busy}
            aria-label={`${reviewWords.chooseCause}: ${cause.name}`}
            onClick={() => onChoose(cause.causeId)}
          >
            {reviewWords.chooseCause}
          </button>
        )}
      </div>
    </li>
  );
  return (
    <section className="stack tight" aria-labelledby="causes-title">
      <h2 id="causes-title" ref={title} tabIndex={-1}>
        {reviewWords.causesTitle}
      </h2>
      {!begun && <p className="soft">{reviewWords.noCauses}</p>}
      {begun && first === null && <p className={styles.nothing}>{reviewWords.nothingStandsOut}</p>}
      <NextLine evidence={evidence} canWork={canWork} onPlace={onPlace} />
      <ol className={styles.causes} aria-label={reviewWords.causesTitle}>
        {shown.map(line)}
      </ol>
      {causes.length > shown.length && (
        <button type="button" className="plain" onClick={() => setAll(true)}>
          {reviewWords.alsoPossible}: {causes.length - shown.length}
        </button>
      )}
    </section>
  );
}
