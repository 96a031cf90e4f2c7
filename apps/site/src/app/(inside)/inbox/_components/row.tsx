'use client';
import { causes } from '@ballfirst/library/causes';
import Link from 'next/link';
import { memo } from 'react';
import { TenBalls } from '../../../../drawings/ten-balls.tsx';
import { inboxWords } from '../../../../words/inbox.ts';
import { inboxReason } from '../../../../words/inbox-reason.ts';
import {
  clubNames,
  outcomeNames,
  painNames,
  rungNames,
  spelt,
  standingNames,
  swingLengthNames,
  viewNames,
} from '../../../../words/names.ts';
import { CloseConcern } from './close-concern.tsx';
import styles from './inbox.module.css';
import { type Close, type Item, pathOfItem } from './use-inbox.ts';

type Props = {
  item: Item;
  mine: boolean;
  current: boolean;
  /** Time left until it is to be answered, in words: they change more seldom than the clock. */
  left: string;
  late: boolean;
  /** Puts an instant into words; the same function for all rows. */
  when: (instant: string) => string;
  /** The same ones for all rows and at every turn. */
  acts: RowActs;
};
export type RowActs = {
  readonly onCurrent: (item: Item) => void;
  readonly onClaim: (item: Item) => void;
  readonly onRelease: (item: Item) => void;
  readonly onClose: (item: Item, outcome: Close) => void;
};

/** What waits: the balls of a swing, or what a concern is. */
function What({ item }: { item: Item }) {
  if (item.kind === 'swing') {
    return (
      <>
        <span>
          {item.leadFault !== null && <strong>{outcomeNames[item.leadFault]}</strong>} {clubNames[item.club]},{' '}
          {viewNames[item.view].toLowerCase()}, {swingLengthNames[item.swingLength].toLowerCase()}
        </span>
        <TenBalls tally={item.tally} />
      </>
    );
  }
  return (
    <>
      <strong>{inboxWords.kinds[item.kind]}</strong>
      {item.kind === 'question' && <span className={styles.asked}>{item.words}</span>}
      {item.kind === 'pain' && <span>{painNames[item.pain]}</span>}
      {item.kind === 'stuck' && item.last !== null && <span>{lastInWords(item.last)}</span>}
    </>
  );
}

const lastInWords = ({ cause, rung }: NonNullable<Item['last']>): string =>
  `${causes.find(({ id }) => id === cause)?.name ?? spelt(cause)}, ${(rungNames[rung] ?? spelt(rung)).toLowerCase()}`;

/** One row that waits: who, what, why it stands here, how long is left, who has it. Of fifty only what changed is drawn anew. */
export const Row = memo(function Row({ item, mine, current, left, late, when, acts }: Props) {
  const { student, claim } = item;
  return (
    <li
      data-id={item.id}
      data-current={current}
      className={item.block === 'pain' ? styles.painRow : styles.row}
      onFocus={() => acts.onCurrent(item)}
      onMouseEnter={() => acts.onCurrent(item)}
    >
      <div className={styles.who}>
        <Link
          href={pathOfItem(item)}
          prefetch={false}
          className={styles.name}
          {...(current && { 'aria-current': 'true' as const })}
        >
          {student.name}
        </Link>
        <span className="soft small">
          {standingNames[student.standing]}
          {student.trialDay !== null && `, ${inboxWords.trialDay(student.trialDay)}`}
        </span>
      </div>
      <div className={styles.what}>
        <What item={item} />
      </div>
      <ul className={styles.reasons} aria-label={inboxWords.why}>
        {item.reasons.map((reason) => (
          <li key={reason.kind} className={reason.kind === 'pain' ? styles.pain : undefined}>
            {inboxReason(reason, when)}
          </li>
        ))}
        {claim?.handed != null && <li>{inboxWords.handed(claim.handed.by, claim.handed.why)}</li>}
      </ul>
      <div className={styles.claim}>
        <span className={late ? styles.late : undefined}>{left}</span>
        <span className="small soft">
          {claim === null ? inboxWords.free : mine ? inboxWords.takenByYou : inboxWords.takenBy(claim.name)}
        </span>
        {claim === null && (
          <button
            type="button"
            className="small-button"
            aria-label={inboxWords.claimFor(student.name)}
            onClick={() => acts.onClaim(item)}
          >
            {inboxWords.claim}
          </button>
        )}
        {mine && (
          <button
            type="button"
            className="small-button"
            aria-label={inboxWords.releaseFor(student.name)}
            onClick={() => acts.onRelease(item)}
          >
            {inboxWords.release}
          </button>
        )}
      </div>
      {item.kind !== 'swing' && (claim === null || mine) && (
        // On a narrow screen the preview lies below the whole list.
        <div className={styles.narrowOnly}>
          <CloseConcern onClose={(outcome) => acts.onClose(item, outcome)} />
        </div>
      )}
    </li>
  );
});
