import styles from './cross.module.css';

type Props = {
  x: number;
  y: number;
  /** Length of an arm in the units of the drawing. */
  arm: number;
  label: string;
  trail?: boolean;
  /** Not confirmed, or carried over from another moment. */
  hollow?: boolean;
  selected?: boolean;
  /** On which side of the mark its name stands. */
  side?: 'left' | 'right';
};

/** A mark: a thin cross with a gap at the centre, so that the point stays visible, and its name. Trail side dashed. */
export function Cross({ x, y, arm, label, side = 'right', ...kind }: Props) {
  const { trail = false, hollow = false, selected = false } = kind;
  const away = side === 'left' ? -1 : 1;
  const gap = arm * 0.3;
  const lines = `M${x - arm} ${y}H${x - gap}M${x + gap} ${y}H${x + arm}M${x} ${y - arm}V${y - gap}M${x} ${y + gap}V${y + arm}`;
  return (
    <g data-mark={label} className={selected ? styles.selected : styles.mark}>
      <path d={lines} className={styles.under} />
      <path d={lines} className={trail ? styles.dashed : styles.line} opacity={hollow ? 0.6 : 1} />
      {hollow && <circle cx={x} cy={y} r={arm * 0.75} className={styles.ring} />}
      <text
        x={x + away * arm * 1.2}
        y={y - arm * 0.4}
        textAnchor={side === 'left' ? 'end' : 'start'}
        fontSize={arm * 1.15}
        className={styles.label}
      >
        {label}
      </text>
    </g>
  );
}
