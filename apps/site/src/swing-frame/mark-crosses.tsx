import { lineOfSize, type Marked, markLabels } from './mark-labels.ts';
import styles from './swing-frame.module.css';

type Props = { marks: readonly Marked[]; widthPx: number; heightPx: number };

/** Thin crosses with a gap at the centre, so that the point stays visible; words beside them. Trail side dashed. */
export function MarkCrosses({ marks, widthPx, heightPx }: Props) {
  // About 12 px of text on a phone, where a portrait picture is narrower than a landscape one.
  const size = widthPx / (widthPx < heightPx ? 19 : 26);
  const [gap, arm] = [size * 0.28, size * 0.85];
  return (
    <svg
      aria-hidden="true"
      className={styles.marks}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      preserveAspectRatio="xMidYMid meet"
    >
      {markLabels(marks, { widthPx, heightPx }, size).map(
        ({ point, name, lines, x, y, labelX, labelY, anchor }) => {
          const cross = `M${x - arm} ${y}H${x - gap}M${x + gap} ${y}H${x + arm}M${x} ${y - arm}V${y - gap}M${x} ${y + gap}V${y + arm}`;
          return (
            <g key={name}>
              <path d={cross} className={styles.halo} strokeWidth={size * 0.3} />
              <path
                d={cross}
                className={styles.cross}
                strokeWidth={size * 0.13}
                {...(point.startsWith('trail-') && { strokeDasharray: `${size * 0.2} ${size * 0.12}` })}
              />
              <text y={labelY} textAnchor={anchor} fontSize={size} strokeWidth={size * 0.2}>
                {lines.map((line, index) => (
                  <tspan key={line} x={labelX} {...(index > 0 && { dy: size * lineOfSize })}>
                    {line}
                  </tspan>
                ))}
              </text>
            </g>
          );
        },
      )}
    </svg>
  );
}
