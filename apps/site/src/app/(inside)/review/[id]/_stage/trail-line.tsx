import type { ClubheadPixel } from '@ballfirst/swing/arc/clubhead-track';
import styles from './lines.module.css';

type Props = {
  trail: readonly ClubheadPixel[];
  frame: number /** In the units of the drawing. */;
  dot: number;
};

/** The way of the clubhead over frames; the frame that is shown is the larger dot. */
export function TrailLine({ trail, frame, dot }: Props) {
  if (trail.length === 0) return null;
  const path = `M${trail.map(({ x, y }) => `${x} ${y}`).join('L')}`;
  return (
    <g className={styles.lines} data-trail={trail.length}>
      <path d={path} className={styles.under} />
      <path d={path} className={styles.line} data-kind="trail" />
      {trail.map((one) => (
        <circle
          key={one.frame}
          cx={one.x}
          cy={one.y}
          r={one.frame === frame ? dot * 1.8 : dot}
          className={styles.dot}
        />
      ))}
    </g>
  );
}
