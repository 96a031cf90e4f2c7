'use client';
import { useReader } from '../times/reader.tsx';
import { practiceWords } from '../words/practice.ts';
import { everyWeek } from './every-week.ts';
import { localDayInWords } from './local-day.ts';
import styles from './week-bars.module.css';

type Week = { readonly week: string; readonly balls: number; readonly clean: number; readonly days: number };

const pitch = 46;
/** As many as a phone shows with words that can be read. */
const mostWeeks = 8;
const tall = 72;
const wide = 22;

/**
 * Balls by week as outlined bars, the clean ones filled; the oldest week left. Newest first in, as the
 * API answers; a week without practice stands empty.
 */
export function WeekBars({ weeks }: { weeks: readonly Week[] }) {
  const { renderedAt } = useReader();
  const inOrder = everyWeek(weeks, renderedAt.slice(0, 10), mostWeeks).reverse();
  const most = Math.max(1, ...inOrder.map(({ balls }) => balls));
  const lines = inOrder.map(({ week, clean, balls, days }) =>
    practiceWords.weekLine(localDayInWords(week), clean, balls, days),
  );
  const width = inOrder.length * pitch;
  return (
    <svg
      role="img"
      aria-label={`${practiceWords.chart}: ${lines.join('; ')}`}
      viewBox={`0 -16 ${width} ${tall + 34}`}
      width={width}
      height={tall + 34}
      className={styles.bars}
    >
      <path d={`M0 ${tall}H${width}`} className={styles.ground} />
      {inOrder.map(({ week, balls, clean }, index) => {
        const left = index * pitch + (pitch - wide) / 2;
        const [all, good] = [(balls / most) * tall, (clean / most) * tall];
        return (
          <g key={week}>
            <rect x={left} y={tall - all} width={wide} height={all} className={styles.all} />
            <rect x={left} y={tall - good} width={wide} height={good} className={styles.clean} />
            {balls > 0 && (
              <text x={left + wide / 2} y={tall - all - 4} textAnchor="middle">
                {clean}/{balls}
              </text>
            )}
            <text x={left + wide / 2} y={tall + 14} textAnchor="middle" className={styles.week}>
              {localDayInWords(week)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
