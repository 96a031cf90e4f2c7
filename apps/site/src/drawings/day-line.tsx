import styles from './day-line.module.css';

const pitch = 12;

/** The days of a trial on a ruled line; today stands taller. The words beside it say the same. */
export function DayLine({ day, days }: { day: number; days: number }) {
  const at = Math.min(days, Math.max(0, day));
  const end = days * pitch;
  const ticks = Array.from(
    { length: days + 1 },
    (_, index) => `M${index * pitch} 8V${index % 7 === 0 ? 16 : 12}`,
  );
  return (
    <svg
      aria-hidden="true"
      viewBox={`-2 -2 ${end + 4} 20`}
      preserveAspectRatio="none"
      className={styles.days}
      data-day={at}
    >
      <path d={`M0 8H${end}${ticks.join('')}`} />
      {at > 0 && <path d={`M0 8H${at * pitch}`} className={styles.gone} />}
      <path d={`M${at * pitch} 0V16`} className={styles.today} />
    </svg>
  );
}
