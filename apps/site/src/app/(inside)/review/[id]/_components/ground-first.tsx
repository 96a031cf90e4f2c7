'use client';
import {
  doubtInWords,
  type FatRisk,
  fatRiskWords,
  figuresOf,
  groundFirst,
  waysInWords,
} from '../../../../../words/fat-risk.ts';
import styles from './evidence.module.css';

type Props = { risk: FatRisk | null; units: 'metric' | 'imperial' };

/** How often the set meets the ground behind the ball and what would change it, in words; the figures are folded. */
export function GroundFirst({ risk, units }: Props) {
  if (risk === null) return null;
  return (
    <section className="stack tight" aria-labelledby="ground-first-title">
      <h2 id="ground-first-title">{fatRiskWords.title}</h2>
      {risk.kind === 'refused' ? (
        <p className="soft">
          {fatRiskWords.notTold}: {risk.words}
        </p>
      ) : (
        <>
          <p>
            <strong>{groundFirst(risk, units)}</strong>
          </p>
          <p>{waysInWords(risk, units)}</p>
          <p className="small soft">{doubtInWords(risk, units)}</p>
          <p className="small soft">{risk.used.join(' ')}</p>
          {risk.missing.length > 0 && (
            <details className="small">
              <summary>{fatRiskWords.surer}</summary>
              <ul className={styles.factors}>
                {risk.missing.map((words) => (
                  <li key={words}>{words}</li>
                ))}
              </ul>
            </details>
          )}
          <details className="small">
            <summary>{fatRiskWords.figures}</summary>
            <dl className={styles.figures}>
              {figuresOf(risk, units).map(([name, figure]) => (
                <div key={name}>
                  <dt>{name}</dt>
                  <dd>{figure}</dd>
                </div>
              ))}
            </dl>
          </details>
        </>
      )}
    </section>
  );
}
