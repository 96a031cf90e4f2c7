import styles from './pointing.module.css';

type Props = {
  readonly x: number;
  readonly y: number /** In the units of the drawing. */;
  readonly size: number;
};

/** What is pointed at: a thin ring that leaves the point itself free. */
export function Pointing({ x, y, size }: Props) {
  return (
    <g data-pointing className={styles.pointing}>
      <circle cx={x} cy={y} r={size} className={styles.under} />
      <circle cx={x} cy={y} r={size} className={styles.ring} />
    </g>
  );
}
