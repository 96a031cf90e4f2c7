import { rungNames, spelt } from '../words/names.ts';
import { ladderWords } from '../words/practice.ts';
import styles from './drill-card.module.css';
import { type OnLadder, type Rung, rungStates } from './rung-states.ts';

const detailsOf = ({ ball, balls, speedPercent, filmed }: Rung): string =>
  [
    ladderWords.balls(balls, ball),
    ...(speedPercent > 0 ? [ladderWords.speed(speedPercent)] : []),
    ...(filmed ? [ladderWords.filmed] : []),
  ].join(', ');

/** The steps from the gentlest to the course, drawn as a ladder lying on its side rail; `full` says what is clean. */
export function RungLadder({ programme, full }: { programme: OnLadder; full: boolean }) {
  return (
    <ol className={styles.ladder}>
      {rungStates(programme).map(({ rung, state }) => (
        <li
          key={rung.id}
          className={styles.rung}
          data-state={state}
          {...(state === 'here' && { 'aria-current': 'step' as const })}
        >
          <svg aria-hidden="true" viewBox="0 0 24 24" width="24" height="24" className={styles.rungMark}>
            {state === 'passed' && <path d="M5 12.5L10 17.5L19 7" />}
            {state === 'here' && <circle cx="12" cy="12" r="6" />}
            {state === 'later' && <path d="M6 12H18" />}
          </svg>
          <div>
            <span className={styles.rungName}>{rungNames[rung.id] ?? spelt(rung.id)}</span>
            <span className="soft small"> {ladderWords[state]}</span>
            {full && (
              <>
                <p className="small soft">{detailsOf(rung)}</p>
                <p className="small">
                  <strong>{ladderWords.clean}</strong> {rung.clean}
                </p>
              </>
            )}
          </div>
        </li>
      ))}
    </ol>
  );
}
