import styles from './ruled-reading.module.css';

type Props = {
  value: number;
  /** One standard uncertainty, same unit as the value. */
  u: number;
  band: { low: number | null; high: number | null } | null;
  label: string;
};

const width = 240;
const edge = 8;

/** A measurement as a ruled line: its band as a bracket above, its doubt (twice the uncertainty) as a bar on the line. */
export function RuledReading({ value, u, band, label }: Props) {
  const ends = [value - 2 * u, value + 2 * u, band?.low, band?.high].filter((end) => typeof end === 'number');
  const low = Math.min(...ends);
  const high = Math.max(...ends);
  const margin = (high - low) * 0.15 || 1;
  const x = (it: number) => edge + ((it - low + margin) / (high - low + 2 * margin)) * (width - 2 * edge);
  const from = band?.low ?? null;
  const to = band?.high ?? null;
  const bracket = [
    from === null ? `M${edge} 8` : `M${x(from)} 14V8`,
    to === null ? `H${width - edge}` : `H${x(to)}V14`,
  ].join('');
  return (
    <svg
      role="img"
      aria-label={label}
      viewBox={`0 0 ${width} 28`}
      preserveAspectRatio="xMinYMid"
      className={styles.reading}
    >
      <path d={`M${edge} 20H${width - edge}`} className={styles.rule} />
      {band !== null && <path d={bracket} className={styles.band} />}
      <path d={`M${x(value - 2 * u)} 20H${x(value + 2 * u)}`} className={styles.doubt} />
      <path d={`M${x(value)} 14V26`} className={styles.value} />
    </svg>
  );
}
