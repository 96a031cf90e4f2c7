import styles from './share-line.module.css';

const length = 300;
const tenths = Array.from(
  { length: 11 },
  (_, index) => `M${(index * length) / 10} 26V${index % 5 === 0 ? 34 : 31}`,
);

type Props = { share: number; low: number; high: number; words: string };

/** A share from 0 to 1 on a ruled line from 0 to 100 %, its interval as a bracket above it. */
export function ShareLine({ share, low, high, words }: Props) {
  const [at, from, to] = [share * length, low * length, high * length];
  return (
    <svg role="img" aria-label={words} viewBox="-18 0 336 54" className={styles.line}>
      <path d={`M0 26H${length}${tenths.join('')}`} className={styles.rule} />
      <path d={`M${from} 20V12H${to}V20`} className={styles.bracket} />
      <path d={`M${at} 4V26`} className={styles.share} />
      {[0, 50, 100].map((percent) => (
        <text key={percent} x={(percent * length) / 100} y="48" textAnchor="middle">
          {percent} %
        </text>
      ))}
    </svg>
  );
}
