import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { exaggerationNames, spelt } from '../words/names.ts';
import { ladderWords } from '../words/practice.ts';
import { drillWords } from '../words/reply.ts';
import { Cautions } from './cautions.tsx';
import styles from './drill-card.module.css';
import { RungLadder } from './rung-ladder.tsx';
import type { Programme } from './rung-states.ts';
import { SecondDrill } from './second-drill.tsx';
import { StationTabs } from './station-tabs.tsx';

/** A working drill on a fat strike brings thin ones: said at once, so that nobody stops because of it. */
const bringsThin = (overCorrection: string): boolean => /^thin\b/i.test(overCorrection);

/** One drill as it is practised; it prints on its own. */
export function DrillCard({ programme, hand }: { programme: Programme; hand: PlayingHand }) {
  const { drill, weeklyMinutes, session, second, overCorrection } = programme;
  return (
    <section id="drill-card" aria-labelledby="drill-kind drill-name" className={styles.card}>
      <div className="stack tight">
        <p id="drill-kind" className="soft small">
          {drillWords.card}
        </p>
        <h2 id="drill-name">{drill.name}</h2>
        <p>{drill.purpose}</p>
        <p className={styles.feel}>
          <strong>{drillWords.feel}:</strong> {drill.feel}
        </p>
      </div>
      <section className="stack" aria-labelledby="drill-station">
        <h3 id="drill-station">{drillWords.station}</h3>
        <StationTabs stations={drill.stations} hand={hand} />
      </section>
      <section className="stack tight" aria-labelledby="drill-steps">
        <h3 id="drill-steps">{drillWords.steps}</h3>
        <ol className={styles.numbered}>
          {drill.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </section>
      <section className="stack tight" aria-labelledby="drill-ladder">
        <h3 id="drill-ladder">{ladderWords.title}</h3>
        <RungLadder programme={programme} full />
      </section>
      <div className={styles.pair}>
        <section className="stack tight" aria-labelledby="drill-dose">
          <h3 id="drill-dose">{drillWords.dose}</h3>
          <ul className={styles.numbered}>
            {session.words.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <p>{drillWords.doseText(session.minutes, drill.ballsAtMost, weeklyMinutes)}</p>
          <p>
            <strong>{drillWords.exaggeration}:</strong>{' '}
            {(exaggerationNames[drill.exaggeration] ?? spelt(drill.exaggeration)).toLowerCase()}.{' '}
            {drill.exaggerationHow}
          </p>
        </section>
        <section className="stack tight" aria-labelledby="drill-wrong">
          <h3 id="drill-wrong">{drillWords.overCorrection}</h3>
          <p>
            {bringsThin(drill.overCorrection) && <strong>{drillWords.overCorrectionLead} </strong>}
            {drill.overCorrection}
          </p>
          {overCorrection !== null && <p className="notice look">{overCorrection.words}</p>}
        </section>
      </div>
      <section className="stack tight" aria-labelledby="drill-stop">
        <h3 id="drill-stop">{drillWords.stop}</h3>
        <p>{drillWords.stopText(session.minutes, drill.ballsAtMost)}</p>
      </section>
      <Cautions title={drillWords.cautions} cautions={drill.cautions} level={3} />
      {second !== null && <SecondDrill second={second} hand={hand} />}
    </section>
  );
}
