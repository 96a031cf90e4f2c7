import { stationWords } from '../words/reply.ts';
import styles from './station.module.css';
import { centimetres, type Distance } from './station-distances.ts';

const off = 30;

/** A distance from the middle of the ball, ruled beside what it measures. */
export function DistanceLine({ distance, towards }: { distance: Distance; towards: 1 | -1 }) {
  const { along, to, mm } = distance;
  const words = stationWords.cm(centimetres(mm));
  if (along === 'u') {
    return (
      <g className={styles.distance}>
        <path d={`M0 -12V${-off - 5}M${to} -12V${-off - 5}M0 ${-off}H${to}`} />
        <text x={to / 2} y={-off - 7} textAnchor="middle">
          {words}
        </text>
      </g>
    );
  }
  const side = towards * 16;
  return (
    <g className={styles.distance}>
      <path
        d={`M${towards * 10} 0H${side + towards * 5}M${towards * 8} ${to}H${side + towards * 5}M${side} 0V${to}`}
      />
      <text x={side + towards * 6} y={to / 2 + 4} textAnchor={towards < 0 ? 'end' : 'start'}>
        {words}
      </text>
    </g>
  );
}
