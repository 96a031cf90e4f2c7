import type { Reply } from '@ballfirst/contracts/client';
import { ShareLine } from '../../../../drawings/share-line.tsx';
import { percentInWords, trialsWords } from '../../../../words/trials.ts';
import styles from './trials.module.css';

/** Fewer than this and the interval is too wide to act on: common practice, no source. */
const fewTrials = 30;

/** The share of the finished trials that became paid, with how sure that is. */
export function Matured({ matured }: { matured: Reply<'readTrials'>['matured'] }) {
  const { trials, paid, share, low, high } = matured;
  return (
    <section className={styles.matured} aria-labelledby="matured-title">
      <h2 id="matured-title">{trialsWords.shareTitle}</h2>
      {share === null || low === null || high === null ? (
        <p className="soft">{trialsWords.noneMatured}</p>
      ) : (
        <>
          <p>
            <strong>
              {trialsWords.share(paid, trials)}, {percentInWords(share)}.
            </strong>{' '}
            {(trials < fewTrials ? trialsWords.interval : trialsWords.intervalMany)(
              percentInWords(low),
              percentInWords(high),
            )}
          </p>
          <ShareLine
            share={share}
            low={low}
            high={high}
            words={trialsWords.line(percentInWords(share), percentInWords(low), percentInWords(high))}
          />
          <p className="hint">{trialsWords.matured}</p>
        </>
      )}
    </section>
  );
}
