import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { drillWords } from '../words/reply.ts';
import { Cautions } from './cautions.tsx';
import styles from './drill-card.module.css';
import type { Programme } from './rung-states.ts';
import { StationTabs } from './station-tabs.tsx';

type Props = { second: NonNullable<Programme['second']>; hand: PlayingHand };

/** The drill that supports the first, after it on the same days; with its own cautions. */
export function SecondDrill({ second, hand }: Props) {
  const { drill, minutes } = second;
  return (
    <section className={`stack ${styles.second}`} aria-labelledby="second-name">
      <div className="stack tight">
        <p className="soft small">{drillWords.second(minutes)}</p>
        <h3 id="second-name">{drill.name}</h3>
        <p>{drill.purpose}</p>
        <p className={styles.feel}>
          <strong>{drillWords.feel}:</strong> {drill.feel}
        </p>
      </div>
      <StationTabs stations={drill.stations} hand={hand} />
      <ol className={styles.numbered}>
        {drill.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p>
        <strong>{drillWords.overCorrection}:</strong> {drill.overCorrection}
      </p>
      <Cautions title={drillWords.secondCautions(drill.name)} cautions={drill.cautions} level={3} />
    </section>
  );
}
