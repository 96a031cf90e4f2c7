import type { Reply } from '@ballfirst/contracts/client';
import { Cautions } from '../../../../drill-card/cautions.tsx';
import { FilmLink } from '../../../../teaching-clip/film-link.tsx';
import { faultsWords } from '../../../../words/faults.ts';
import styles from './faults.module.css';

type Props = {
  next: Reply<'readFaultsLately'>['teachNext'];
  clips: Reply<'listTeachingClips'>['items'];
};

/** The cause that most students share, how it is said, the drills for it and what to say first. */
export function TeachNext({ next, clips }: Props) {
  if (next === null) {
    return (
      <section className="stack tight measure" aria-labelledby="teach-title">
        <h2 id="teach-title">{faultsWords.teachTitle}</h2>
        <p>{faultsWords.teachNone}</p>
      </section>
    );
  }
  const clip = clips.find(({ cause }) => cause === next.cause);
  return (
    <section className={styles.teach} aria-labelledby="teach-title">
      <div className="stack tight measure">
        <h2 id="teach-title">{faultsWords.teachTitle}</h2>
        <p>{faultsWords.teach(next.name, next.students, next.of, next.days)}</p>
        <p className={styles.say}>{next.say}</p>
        {clip !== undefined && (
          <p>
            {faultsWords.film}: <FilmLink clip={clip} />
          </p>
        )}
      </div>
      <div className="stack tight">
        <h3>{faultsWords.drills}</h3>
        <ul className="stack tight">
          {next.drills.map(({ id, name, purpose }) => (
            <li key={id}>
              <strong>{name}.</strong> {purpose}
            </li>
          ))}
        </ul>
      </div>
      <div className={styles.cautions}>
        <Cautions title={faultsWords.cautions} cautions={next.cautions} level={3} />
      </div>
    </section>
  );
}
