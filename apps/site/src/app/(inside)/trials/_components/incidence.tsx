import type { Reply } from '@ballfirst/contracts/client';
import { percentInWords, trialsWords } from '../../../../words/trials.ts';
import styles from './incidence.module.css';

type Incidence = NonNullable<Reply<'readTrials'>['incidence']>;

const width = 320;
const height = 96;
const lastDay = 22;

/** A stair of shares by day: flat until the next day on which something happened. */
const stair = (
  steps: Incidence['steps'],
  of: 'share' | 'low' | 'high',
): readonly [x: number, y: number][] => {
  const x = (day: number) => (Math.min(day, lastDay) / lastDay) * width;
  const y = (share: number) => height - share * height;
  const corners = steps.flatMap((step, n): [number, number][] => {
    const before = steps[n - 1]?.[of] ?? 0;
    return [
      [x(step.day), y(before)],
      [x(step.day), y(step[of])],
    ];
  });
  return [[0, height], ...corners, [width, y(steps.at(-1)?.[of] ?? 0)]];
};
const points = (line: readonly (readonly [number, number])[]): string =>
  line.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** How the share of trials that become paid grows by day, with its interval; open trials are counted as far as they are. */
export function IncidenceLine({ incidence }: { incidence: Incidence | null }) {
  if (incidence === null) return null;
  const { share, low, high, trials, open, steps } = incidence;
  const [percent, from, to] = [share, low, high].map(percentInWords);
  return (
    <section className={styles.incidence} aria-labelledby="incidence-title">
      <h2 id="incidence-title">{trialsWords.incidenceTitle}</h2>
      <p>
        <strong>{percent}</strong> {trialsWords.incidence(from ?? '', to ?? '', trials, open)}
      </p>
      <svg
        viewBox={`-2 -6 ${width + 40} ${height + 26}`}
        role="img"
        aria-label={trialsWords.incidenceLine(percent ?? '', from ?? '', to ?? '')}
        className={styles.line}
      >
        <polygon
          className={styles.doubt}
          points={points([...stair(steps, 'high'), ...[...stair(steps, 'low')].reverse()])}
        />
        <polyline className={styles.share} points={points(stair(steps, 'share'))} />
        <path className={styles.axis} d={`M0 0V${height}H${width}`} />
        {[0, 0.5, 1].map((at) => (
          <text key={at} x={width + 6} y={height - at * height + 4} className={styles.words}>
            {percentInWords(at)}
          </text>
        ))}
        {[1, 7, 14, 21].map((day) => (
          <text
            key={day}
            x={(day / lastDay) * width}
            y={height + 16}
            textAnchor="middle"
            className={styles.words}
          >
            {day}
          </text>
        ))}
      </svg>
      <p className="hint">{trialsWords.incidenceHint}</p>
    </section>
  );
}
