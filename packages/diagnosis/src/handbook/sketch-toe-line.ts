import { measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { Mark } from '@ballfirst/swing/marks/marks';
import { plantedBehind } from '@ballfirst/swing/marks/planted-behind';

const size = { widthPx: 150, heightPx: 110, marginPx: 14 } as const;
const ink = { still: '#b9c0bc', moved: '#4b5a52', mark: '#b4461f' } as const;
type At = readonly [x: number, y: number];

/** The ground from behind: ball, stick on the target line, and the tips of the shoes, clearly open. */
export function sketchToeLine(): string {
  const marks = plantedBehind({ toesOpenDeg: 12 }).filter(({ position }) => position === 'address');
  const at = (point: Mark['point']): At => {
    const { x = 0, y = 0 } = marks.find((mark) => mark.point === point) ?? {};
    return [x, y];
  };
  const named = ['target-stick', 'target-stick-ahead', 'trail-toe', 'lead-toe', 'ball'] as const;
  const [xs, ys] = [named.map((point) => at(point)[0]), named.map((point) => at(point)[1])];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const across = (size.widthPx - 2 * size.marginPx) / (Math.max(...xs) - left);
  const down = (size.heightPx - 2 * size.marginPx) / (Math.max(...ys) - top);
  const drawn = (point: Mark['point']): At => {
    const [x, y] = at(point);
    return [size.marginPx + (x - left) * across, size.marginPx + (y - top) * down];
  };
  const line = (from: Mark['point'], to: Mark['point'], stroke: string) => {
    const [[x1, y1], [x2, y2]] = [drawn(from), drawn(to)];
    return `<path d="M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}" stroke="${stroke}" stroke-width="2" stroke-linecap="round"/>`;
  };
  const dot = (point: Mark['point'], radius: number, fill: string) => {
    const [x, y] = drawn(point);
    return `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${radius}" fill="${fill}"/>`;
  };
  const parts = [
    line('target-stick', 'target-stick-ahead', ink.still),
    line('trail-toe', 'lead-toe', ink.mark),
    ...named.slice(0, 4).map((point) => dot(point, 3.2, ink.mark)),
    dot('ball', 2.5, ink.moved),
  ];
  const { name } = measurementNames['toe-line-to-target-stick'];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${size.widthPx}" height="${size.heightPx}" viewBox="0 0 ${size.widthPx} ${size.heightPx}"><title>${name}</title><rect width="100%" height="100%" fill="#fbfaf6"/>${parts.join('')}</svg>\n`;
}
