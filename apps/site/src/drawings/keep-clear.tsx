import { filmWords } from '../words/film.ts';
import styles from './phone-place.module.css';

type Props = { x: number; y: number; width: number; height: number; labelled: boolean };

const pitch = 12;

/** Ground on the ball side where nobody stands: hatched, and named once. */
export function KeepClear({ x, y, width, height, labelled }: Props) {
  const strokes = Array.from({ length: Math.floor((width - height) / pitch) + 1 }, (_, at) => at * pitch);
  const path = strokes.map((from) => `M${x + from} ${y + height}L${x + from + height} ${y}`).join('');
  return (
    <g>
      <path d={path} className={styles.hatch} />
      {labelled && (
        <text x={x + width / 2} y={y - 6} textAnchor="middle" className={styles.soft}>
          {filmWords.nobody}
        </text>
      )}
    </g>
  );
}
