import { filmWords } from '../words/film.ts';
import styles from './phone-place.module.css';

/** Our drawing of how high the phone stands: seen from the side, the lens level with the hands at set-up. */
export function PhoneHeight() {
  return (
    <svg role="img" aria-label={filmWords.drawingHeight} viewBox="-170 -104 340 132" className={styles.plan}>
      <path d="M-160 12H160" className={styles.ink} />
      <g className={styles.ink}>
        <circle cx="66" cy="-78" r="10" />
        <path d="M68 -68L92 -26M92 -26L84 -4L90 12M92 -26L98 -4L92 12M70 -60L62 -30M62 -30L26 10" />
      </g>
      <circle cx="20" cy="8" r="4" className={styles.ball} />
      <path d="M-112 -30H58" className={styles.line} />
      <g className={styles.phone}>
        <rect x="-124" y="-42" width="8" height="24" rx="2" />
        <path d="M-120 -18V-6M-120 -6L-134 12M-120 -6L-106 12" />
      </g>
      <text x="-102" y="-38" className={styles.soft}>
        {filmWords.handHeight}
      </text>
      <text x="-20" y="4" textAnchor="middle" className={styles.soft}>
        {filmWords.steps}
      </text>
    </svg>
  );
}
