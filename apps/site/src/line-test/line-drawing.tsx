import { lengthFromLine, lineTestWords } from '../words/line-test.ts';
import styles from './line-drawing.module.css';

type Props = {
  startsMm: readonly number[];
  units: 'metric' | 'imperial';
  hand: 'right' | 'left';
  /** Mean with its interval, drawn as a bracket; left out while the test is on. */
  mean?: { lowMm: number; highMm: number; meanStartMm: number };
  /** Called with a place in mm where the drawing is tapped. */
  onTap?: (mm: number) => void;
};

/** Widest place that is drawn. */
export const widestMm = 150;
const rows = 5;
const perMm = 1;
const ticks = { metric: [-100, -50, 50, 100], imperial: [-101.6, -50.8, 50.8, 101.6] } as const;
/** Brushes are drawn this long: about a small divot's first part. */
const brushMm = 22;

/** The line from above with each brush beside it; a right-hander's target lies to the left, as it is seen from the feet. */
export function LineDrawing({ startsMm, units, hand, mean, onTap }: Props) {
  const towards = hand === 'right' ? -1 : 1;
  const x = (mm: number): number => towards * Math.max(-widestMm, Math.min(widestMm, mm)) * perMm;
  const tap = (event: React.PointerEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const at = ((event.clientX - box.left) / box.width) * 340 - 170;
    onTap?.(Math.round(Math.max(-widestMm, Math.min(widestMm, (towards * at) / perMm))));
  };
  const brushes = startsMm
    .map((mm, at) => `M${x(mm)} ${-22 + (at % rows) * 11}h${towards * brushMm}`)
    .join('');
  const begins = startsMm.map((mm, at) => `M${x(mm)} ${-22 + (at % rows) * 11}h0`).join('');
  return (
    <svg
      role="img"
      aria-label={lineTestWords.drawing(startsMm.length)}
      viewBox="-170 -52 340 104"
      className={onTap === undefined ? styles.plan : `${styles.plan} ${styles.pad}`}
      {...(onTap !== undefined && { onPointerDown: tap })}
    >
      <path d={`M${-towards * 150} 40H${towards * 150}`} className={styles.ground} />
      <path d={`M${towards * 142} 34L${towards * 152} 40L${towards * 142} 46`} className={styles.ground} />
      <text x={towards * 138} y="32" textAnchor={towards < 0 ? 'start' : 'end'}>
        {lineTestWords.target}
      </text>
      {ticks[units].map((mm) => (
        <g key={mm}>
          <path d={`M${x(mm)} 36V44`} className={styles.tick} />
          <text x={x(mm)} y="-40" textAnchor="middle">
            {lengthFromLine(mm, units)}
          </text>
          <path d={`M${x(mm)} -34V-30`} className={styles.tick} />
        </g>
      ))}
      <path d="M0 -36V44" className={styles.line} />
      <text x="0" y="-40" textAnchor="middle">
        {lineTestWords.line}
      </text>
      <path d={brushes} className={styles.brush} />
      <path d={begins} className={styles.begin} />
      {mean !== undefined && (
        <path
          d={`M${x(mean.lowMm)} 36V44M${x(mean.lowMm)} 40H${x(mean.highMm)}M${x(mean.highMm)} 36V44M${x(mean.meanStartMm)} 34V46`}
          className={styles.mean}
        />
      )}
    </svg>
  );
}
