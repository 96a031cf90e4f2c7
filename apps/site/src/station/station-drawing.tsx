import { ballDiameterMm, gripLengthMm } from '@ballfirst/library/constants';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { stationWords } from '../words/reply.ts';
import { DistanceLine } from './distance-line.tsx';
import { ObjectShape } from './object-shape.tsx';
import styles from './station.module.css';
import { stationDistances } from './station-distances.ts';
import { labelLineUnits, placeLabels } from './station-labels.ts';
import {
  around,
  type Box,
  placeObject,
  type Station,
  type StationObject,
  towardsTarget,
  unitsPerMm,
} from './station-plan.ts';

const sheetWidth = 340;
const ballRadius = (ballDiameterMm / 2) * unitsPerMm;
const grip = gripLengthMm * unitsPerMm;
/** Where the ball would lie: drawn and named at home, where none is struck. */
const ballSpot: StationObject = {
  what: 'ball',
  xMm: 0,
  yMm: 0,
  lengthMm: ballDiameterMm,
  widthMm: ballDiameterMm,
  rotationDeg: 0,
  label: stationWords.spot,
};

/** The practice spot from above, to scale: player at the foot, target to the side, a grip length to measure with. */
export function StationDrawing({ station, hand }: { station: Station; hand: PlayingHand }) {
  const towards = towardsTarget(hand);
  const placed = station.objects.map((object) => placeObject(object, hand));
  const spot: Box = { left: -ballRadius, right: ballRadius, top: -ballRadius, bottom: ballRadius };
  const things = around([spot, ...placed.map(({ box }) => box)]);
  const middle = (things.left + things.right) / 2;
  const half = Math.max(sheetWidth, things.right - things.left + 130) / 2;
  const sheet = {
    left: middle - half,
    right: middle + half,
    top: things.top - 58,
    bottom: things.bottom + 66,
  };
  const distances = stationDistances(placed);
  const hasBall = placed.some(({ object }) => object.what === 'ball');
  const footLine = things.bottom;
  const targetEnd = towards < 0 ? sheet.left + 8 : sheet.right - 8;

  const taken: Box[] = [
    ...(hasBall ? [] : [spot]),
    { left: sheet.left, right: sheet.right, top: sheet.bottom - 34, bottom: sheet.bottom },
    {
      left: Math.min(targetEnd, targetEnd - towards * 60),
      right: Math.max(targetEnd, targetEnd - towards * 60),
      top: -24,
      bottom: 8,
    },
    ...distances.map(
      ({ along, to }): Box =>
        along === 'u'
          ? { left: Math.min(0, to), right: Math.max(0, to), top: -52, bottom: -12 }
          : { left: towards < 0 ? -58 : 2, right: towards < 0 ? -2 : 58, top: 0, bottom: to },
    ),
  ];
  const labels = placeLabels(hasBall ? placed : [...placed, placeObject(ballSpot, hand)], taken, sheet);
  const names = [...new Set(station.objects.map(({ label }) => label))];
  const words = `${stationWords.drawing(stationWords.onPlace[station.place])}: ${names.join('; ')}.`;

  return (
    <svg
      role="img"
      aria-label={words}
      className={styles.station}
      viewBox={`${sheet.left} ${sheet.top} ${sheet.right - sheet.left} ${sheet.bottom - sheet.top}`}
    >
      <path d={`M${sheet.left + 8} 0H${sheet.right - 8}`} className={styles.targetLine} />
      <path
        d={`M${targetEnd - towards * 10} -6L${targetEnd} 0L${targetEnd - towards * 10} 6`}
        className={styles.arrow}
      />
      <text x={targetEnd} y="-11" textAnchor={towards < 0 ? 'start' : 'end'} className={styles.soft}>
        {stationWords.target}
      </text>
      <path d={`M0 ${ballRadius}V${footLine}`} className={styles.plumb} />
      {placed.map((one) => (
        <ObjectShape key={`${one.object.what} ${one.u} ${one.v}`} placed={one} />
      ))}
      {!hasBall && <circle r={ballRadius} className={styles.spot} />}
      {distances.map((distance) => (
        <DistanceLine key={`${distance.along} ${distance.to}`} distance={distance} towards={towards} />
      ))}
      {labels.map(({ lines, u, v }) => (
        <text key={lines.join(' ')} x={u} y={v} textAnchor="middle">
          {lines.map((line, index) => (
            <tspan key={line} x={u} {...(index > 0 && { dy: labelLineUnits })}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
      <g transform={`translate(${middle - grip / 2} ${sheet.bottom - 12})`} className={styles.bar}>
        <path d={`M0 -5V5M0 0H${grip}M${grip} -5V5`} />
        <text x={grip / 2} y="-9" textAnchor="middle">
          {stationWords.grip}
        </text>
      </g>
    </svg>
  );
}
