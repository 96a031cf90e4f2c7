import styles from './film-again-drawing.module.css';

type Reason = 'club-out-of-picture' | 'too-dark' | 'camera-moves' | 'wrong-angle' | 'cut-short' | 'too-far';

/** A player drawn with a few lines, club up. */
const figure = 'M40 18a4 4 0 1 0 .1 0M40 26V42M40 42L34 58M40 42L46 58M40 29L28 24L22 8';

const drawings: Readonly<Record<Reason, readonly string[]>> = {
  'club-out-of-picture': ['M40 24a4 4 0 1 0 .1 0M40 32V46M40 46L35 58M40 46L45 58M40 35L29 28L24 0'],
  'too-dark': [figure, 'M8 14L24 58M20 6L42 62M36 4L60 62M54 6L72 50'],
  'camera-moves': [figure, 'M8 20L4 28L8 36M72 20L76 28L72 36'],
  'wrong-angle': [
    'M30 20a4 4 0 1 0 .1 0M30 28L34 42M34 42L30 58M34 42L42 56M31 31L20 24L16 10',
    'M52 56L72 36M72 36H64M72 36V44',
  ],
  'cut-short': [
    'M40 18a4 4 0 1 0 .1 0M40 26V42M40 42L34 58M40 42L46 58M40 29L52 34L62 46',
    'M66 4V60M70 4V60',
  ],
  'too-far': ['M40 33a2 2 0 1 0 .1 0M40 37V43M40 43L38 49M40 43L42 49M40 38L36 36L34 31'],
};

/** Why a video does not do, drawn in its frame. Decoration beside the words. */
export function FilmAgainDrawing({ reason }: { reason: Reason }) {
  return (
    <svg aria-hidden="true" viewBox="0 0 80 64" className={styles.drawing}>
      <rect x="1" y="1" width="78" height="62" className={styles.edge} />
      {drawings[reason].map((path, at) => (
        <path key={path} d={path} className={at === 0 ? styles.player : styles.fault} />
      ))}
    </svg>
  );
}
