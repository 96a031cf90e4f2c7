import { type Outcome, outcomeOrder, type Tally, tallyInWords, tappedBalls } from '../words/tally.ts';
import styles from './ten-balls.module.css';

const pitch = 18;

/** A circle around (x, 0) as a path. */
const circle = (x: number, r: number) => `M${x - r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

/**
 * Where the club met the ball, told by shape: the ground line, the edge that was struck, the side of the face. As what is
 * filled, what is drawn thin, what is drawn heavy, around (x, 0).
 */
const strokes: Readonly<
  Record<Outcome, (x: number) => { readonly solid?: string; readonly thin?: string; readonly heavy?: string }>
> = {
  solid: (x) => ({ solid: circle(x, 6) }),
  fat: (x) => ({ thin: circle(x, 6), heavy: `M${x - 8} 8.5h7` }),
  thin: (x) => ({ thin: `${circle(x, 6)}M${x - 6} 0h12` }),
  topped: (x) => ({ thin: circle(x, 6), heavy: `M${x - 7} -7.5h14` }),
  heel: (x) => ({ thin: circle(x, 6), solid: circle(x - 3, 2) }),
  toe: (x) => ({ thin: circle(x, 6), solid: circle(x + 3, 2) }),
  shank: (x) => ({ thin: `${circle(x, 6)}M${x - 5} 5l10 -10` }),
  sky: (x) => ({ thin: `${circle(x, 6)}M${x} 3v-12m-3 3l3 -3l3 3` }),
};

/** The balls of a tally in a row, drawn in four strokes at most; long tallies are only written. */
export function TenBalls({ tally, reader = 'coach' }: { tally: Tally; reader?: 'coach' | 'student' }) {
  const words = tallyInWords(tally, reader);
  if (tally.balls > 20) return <span>{words}</span>;
  const tapped = tappedBalls(tally);
  const outcomes = outcomeOrder.flatMap((outcome) =>
    new Array<Outcome>(Math.max(0, tally[outcome])).fill(outcome),
  );
  const marks = outcomes.map((outcome, at) => strokes[outcome](at * pitch + 9));
  const all = (kind: 'solid' | 'thin' | 'heavy') => marks.map((mark) => mark[kind] ?? '').join('');
  const unsaid = Array.from({ length: Math.max(0, tally.balls - tapped) }, (_, at) =>
    circle((tapped + at) * pitch + 9, 6),
  );
  return (
    <svg
      role="img"
      aria-label={words}
      className={styles.balls}
      viewBox={`0 -10 ${tally.balls * pitch} 20`}
      width={tally.balls * pitch}
      height="20"
      data-tapped={tapped}
    >
      <path d={all('thin')} />
      <path d={all('solid')} className={styles.solid} />
      <path d={all('heavy')} className={styles.heavy} />
      {unsaid.length > 0 && <path d={unsaid.join('')} className={styles.unsaid} />}
    </svg>
  );
}
