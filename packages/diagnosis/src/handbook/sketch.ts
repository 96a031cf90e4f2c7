import type { Definition } from '@ballfirst/swing/definitions/definition';
import { measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { Mark, Point, Position, View } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import { plantedBehind } from '@ballfirst/swing/marks/planted-behind';
import { plantedFully } from '@ballfirst/swing/marks/planted-marks';

type At = readonly [x: number, y: number];
const size = { widthPx: 150, heightPx: 190, marginPx: 14 } as const;
const ink = { still: '#b9c0bc', moved: '#4b5a52', mark: '#b4461f' } as const;

/** Limbs of a figure: points of one moment that a line joins; feet stand where they stood at address. */
const limbs: readonly (readonly Point[])[] = [
  ['head-centre', 'neck-base', 'hip-middle'],
  ['hip-middle', 'trail-ankle'],
  ['hip-middle', 'lead-ankle'],
  ['neck-base', 'lead-shoulder', 'lead-elbow', 'lead-wrist', 'grip-end'],
  ['hands', 'grip-end', 'shaft-mid', 'clubhead'],
  ['grip-end', 'clubhead'],
  ['hands', 'clubhead'],
];
const planted = (marks: readonly Mark[]) =>
  new Map(marks.map(({ position, point, x, y }) => [`${position}/${point}`, [x, y] as const]));
const bodies: Readonly<Record<View, ReadonlyMap<string, At>>> = {
  'face-on': planted(plantedFully({ hipToTop: -60, headToTop: -70, hipFromTop: 110 })),
  'down-the-line': planted(plantedBehind({ seatTowardBall: 60, trunkBendLostDeg: 12 })),
};
const standing: ReadonlySet<Point> = new Set(['trail-ankle', 'lead-ankle', 'ball', 'toe-line']);

const line = (points: readonly At[], stroke: string, width: number) =>
  `<polyline points="${points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')}" fill="none" stroke="${stroke}" stroke-width="${width}" stroke-linecap="round"/>`;
const dot = ([x, y]: At, r: number, fill: string) =>
  `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${r}" fill="${fill}"/>`;

/** What is told, drawn between the places: a level or an upright distance, or the lines of an angle. */
function told({ formula }: Definition, spots: readonly At[]): string {
  const [a, b, c, d] = spots;
  if (a === undefined || b === undefined) return '';
  const lines: readonly (readonly At[])[] =
    formula === 'apart'
      ? [
          [a, [b[0], a[1]]],
          [[b[0], a[1]], b],
        ]
      : formula === 'raised'
        ? [
            [a, [a[0], b[1]]],
            [[a[0], b[1]], b],
          ]
        : formula === 'bend'
          ? [spots]
          : formula === 'above' && c !== undefined
            ? [[b, c]]
            : c !== undefined && d !== undefined
              ? [
                  [a, b],
                  [c, d],
                ]
              : [[a, b]];
  return lines.map((one) => line(one, ink.mark, 1.6)).join('');
}

/**
 * A small drawing of a measurement: the invented figure of the tests at the moments it is read at, the earliest one pale,
 * with the marks it needs.
 *
 * @returns an SVG document
 */
export function sketchOf(definition: Definition): string {
  const body = bodies[definition.view];
  const placed = ({ position, point }: Place): At | undefined =>
    body.get(`${position}/${point}`) ?? (standing.has(point) ? body.get(`address/${point}`) : undefined);
  // Where a measurement starts, or else where the swing does, stands pale behind what it is read on.
  const last = definition.positions.at(-1) ?? 'address';
  const [first = 'address'] = definition.positions.length > 1 ? definition.positions : ['address' as const];
  const moments: readonly Position[] = first === last ? [last] : [first, last];
  const chains = moments.flatMap((position) =>
    limbs.map((limb) => ({
      stroke: position === last ? ink.moved : ink.still,
      at: limb.map((point) => placed({ position, point })).filter((spot) => spot !== undefined),
    })),
  );
  const spots = definition.places.map(placed).filter((spot) => spot !== undefined);
  const ball = placed({ position: 'address', point: 'ball' });
  const every = [...chains.flatMap(({ at }) => at), ...spots, ...(ball === undefined ? [] : [ball])];
  const [xs, ys] = [every.map(([x]) => x), every.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const scale = Math.min(
    (size.widthPx - 2 * size.marginPx) / Math.max(1, Math.max(...xs) - left),
    (size.heightPx - 2 * size.marginPx) / Math.max(1, Math.max(...ys) - top),
  );
  const drawn = ([x, y]: At): At => [size.marginPx + (x - left) * scale, size.marginPx + (y - top) * scale];
  const heads = moments.map((position) => placed({ position, point: 'head-centre' }));
  const parts = [
    ...heads.filter((spot) => spot !== undefined).map((spot) => dot(drawn(spot), 5, ink.still)),
    ...chains.filter(({ at }) => at.length > 1).map(({ at, stroke }) => line(at.map(drawn), stroke, 2)),
    ...(ball === undefined ? [] : [dot(drawn(ball), 2.5, ink.moved)]),
    told(definition, spots.map(drawn)),
    ...spots.map((spot) => dot(drawn(spot), 3.2, ink.mark)),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size.widthPx}" height="${size.heightPx}" viewBox="0 0 ${size.widthPx} ${size.heightPx}"><title>${measurementNames[definition.key].name}</title><rect width="100%" height="100%" fill="#fbfaf6"/>${parts.join('')}</svg>\n`;
}
