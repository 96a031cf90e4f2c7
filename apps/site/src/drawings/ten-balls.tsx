import { type Outcome, outcomeOrder, type Tally, tallyInWords, tappedBalls } from '../words/tally.ts';
import styles from './ten-balls.module.css';

const pitch = 18;

/** Where the club met each ball, told by shape: the ground line, the edge that was struck, the side of the face. */
function BallMark({ outcome }: { outcome: Outcome | 'unsaid' }) {
  switch (outcome) {
    case 'solid':
      return <circle r="6" className={styles.solid} />;
    case 'fat':
      return (
        <>
          <circle r="6" />
          <path d="M-8 8.5H-1" className={styles.heavy} />
        </>
      );
    case 'thin':
      return (
        <>
          <circle r="6" />
          <path d="M-6 0H6" />
        </>
      );
    case 'topped':
      return (
        <>
          <circle r="6" />
          <path d="M-7 -7.5H7" className={styles.heavy} />
        </>
      );
    case 'heel':
    case 'toe':
      return (
        <>
          <circle r="6" />
          <circle r="2" cx={outcome === 'heel' ? -3 : 3} className={styles.solid} />
        </>
      );
    case 'shank':
      return (
        <>
          <circle r="6" />
          <path d="M-5 5L5 -5" />
        </>
      );
    case 'sky':
      return (
        <>
          <circle r="6" />
          <path d="M0 3V-9M-3 -6L0 -9L3 -6" />
        </>
      );
    case 'unsaid':
      return <circle r="6" className={styles.unsaid} />;
  }
}

const rowOf = (outcome: Outcome | 'unsaid', count: number) =>
  Array.from({ length: Math.max(0, count) }, (_, at) => ({ outcome, key: `${outcome} ${at}` }));

/** The balls of a tally in a row, drawn; long tallies are only written. */
export function TenBalls({ tally, reader = 'coach' }: { tally: Tally; reader?: 'coach' | 'student' }) {
  const words = tallyInWords(tally, reader);
  if (tally.balls > 20) return <span>{words}</span>;
  const balls = outcomeOrder.flatMap((outcome) => rowOf(outcome, tally[outcome]));
  balls.push(...rowOf('unsaid', tally.balls - tappedBalls(tally)));
  return (
    <svg
      role="img"
      aria-label={words}
      className={styles.balls}
      viewBox={`0 0 ${tally.balls * pitch} 20`}
      width={tally.balls * pitch}
      height="20"
      data-tapped={tappedBalls(tally)}
    >
      {balls.map(({ outcome, key }, index) => (
        <g key={key} transform={`translate(${index * pitch + 9} 10)`}>
          <BallMark outcome={outcome} />
        </g>
      ))}
    </svg>
  );
}
