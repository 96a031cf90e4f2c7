import { lineNames } from '../../../../../words/stage.ts';
import styles from './lines.module.css';
import type { LineKind, OverlayLine } from './overlay-lines.ts';

type Props = {
  lines: readonly OverlayLine[];
  /** Length of a tick in the units of the drawing. */
  tick: number;
};

const ruled = ({ x1, y1, x2, y2 }: OverlayLine, tick: number): string => {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [dx, dy] = [((y2 - y1) / long) * tick, (-(x2 - x1) / long) * tick];
  const end = (x: number, y: number) => `M${x - dx} ${y - dy}L${x + dx} ${y + dy}`;
  return `M${x1} ${y1}L${x2} ${y2}${end(x1, y1)}${end(x2, y2)}`;
};

/** Those whose name stands clear of the marks; the others are known by their strokes. */
const named = new Set<LineKind>(['ball-line', 'seat-line']);

/** Ruled lines with a tick at each end, as on a drawing board; with its name where that is clear of the player. */
export function Lines({ lines, tick }: Props) {
  return (
    <g className={styles.lines}>
      {lines.map((line) => {
        const path = ruled(line, tick * 0.5);
        return (
          <g key={`${line.kind} ${line.x1} ${line.y1} ${line.x2} ${line.y2}`} data-line={line.kind}>
            <path d={path} className={styles.under} />
            <path d={path} className={styles.line} data-kind={line.kind} />
            {named.has(line.kind) && (
              <text x={line.x2} y={line.y2 - tick * 0.5} textAnchor="middle" fontSize={tick * 1.05}>
                {lineNames[line.kind]}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
