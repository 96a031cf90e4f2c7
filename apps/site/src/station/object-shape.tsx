import styles from './station.module.css';
import type { Placed } from './station-plan.ts';

/** Outline of a shoe in a box of its own length and width, the toe at the far end of its length. */
const shoe = (length: number, width: number): string => {
  const [l, w] = [length / 2, width / 2];
  return [
    `M${-l} 0`,
    `C${-l} ${-w * 0.9} ${-l * 0.5} ${-w * 0.8} ${-l * 0.1} ${-w * 0.75}`,
    `C${l * 0.3} ${-w * 1.05} ${l} ${-w * 1.1} ${l} 0`,
    `C${l} ${w * 1.1} ${l * 0.3} ${w * 1.05} ${-l * 0.1} ${w * 0.75}`,
    `C${-l * 0.5} ${w * 0.8} ${-l} ${w * 0.9} ${-l} 0Z`,
  ].join('');
};

/** One object of a station. A foot's length leads from heel to toe. */
export function ObjectShape({ placed }: { placed: Placed }) {
  const { object, u, v, length, width, turnDeg } = placed;
  const at = `translate(${u} ${v})`;
  const turned = `${at} rotate(${turnDeg})`;
  const rect = (className: string | undefined) => (
    <rect
      x={-length / 2}
      y={-width / 2}
      width={length}
      height={width}
      transform={turned}
      className={className}
    />
  );
  switch (object.what) {
    case 'ball':
      return <circle r={length / 2} transform={at} className={styles.ball} />;
    case 'soft-ball':
    case 'tee':
      return <circle r={length / 2} transform={at} className={styles.softBall} />;
    case 'lead-foot':
    case 'trail-foot':
      return <path d={shoe(length, width)} transform={turned} className={styles.foot} />;
    case 'towel':
    case 'cushion':
      return rect(styles.towel);
    case 'line':
      return rect(styles.line);
    default:
      return rect(styles.tape);
  }
}
