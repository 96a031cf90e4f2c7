'use client';
import { replyDeskWords } from '../../../../../words/reply-desk.ts';
import styles from './offer-note.module.css';
import type { Offer } from './reply-form.ts';

/** Under which means the drill was chosen, the first session, and what was left out for which reason. */
export function OfferNote({ offer }: { offer: Offer | null }) {
  if (offer === null) return null;
  const { means, leftOut, session, plan } = offer;
  return (
    <div className="stack tight small">
      <p className="soft">{replyDeskWords.offerFor(means)}</p>
      {plan === null && <p className="notice look">{replyDeskWords.nothingFits}</p>}
      {session !== null && (
        <details>
          <summary>{replyDeskWords.firstSession}</summary>
          <ul className={styles.said}>
            {session.words.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      {leftOut.length > 0 && (
        <details open={plan === null}>
          <summary>{replyDeskWords.leftOut(leftOut.length)}</summary>
          <ul className={styles.said}>
            {leftOut.map(({ what, why }) => (
              <li key={`${what} ${why}`}>
                <strong>{what}.</strong> {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
