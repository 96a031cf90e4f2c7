import type { Size } from '../rendition-size.ts';
import { strokesOfWords } from './letters.ts';
import { placeLabels, type Spot } from './place-labels.ts';

/** What is drawn on a picture, in its pixels: marks with their names, and ruled lines that may have one. */
export type Overlay = {
  readonly marks: readonly (Spot & { readonly point: string; readonly name: string })[];
  readonly lines: readonly {
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
    readonly name: string | null;
  }[];
};

const ground = '#161616';
const ink = '#f2f2f2';
const markInk = '#ffd166';

/**
 * Marks as thin crosses with a gap, so that the point stays visible, lead solid and trail dashed; lines ruled with a tick
 * at each end; names beside them in stroked letters. Every stroke lies on a darker, wider one: seen on grass and on sky.
 */
export function overlaySvg({ marks, lines }: Overlay, picture: Size): string {
  const { widthPx, heightPx } = picture;
  const size = widthPx / (widthPx < heightPx ? 19 : 26);
  const crosses = marks.map((mark) => ({ path: cross(mark, size), dashed: mark.point.startsWith('trail-') }));
  const ruled = lines.map((line) => ruledLine(line, size * 0.35));
  const labels = placeLabels(
    [
      ...marks.map(({ x, y, name }) => ({ x, y, words: name })),
      ...lines.flatMap(({ x1, y1, x2, y2, name }) =>
        name === null
          ? []
          : [
              {
                words: name,
                ...(x1 === x2 ? { x: x2, y: y2 } : { x: (x1 + x2) / 2, y: Math.max(y1, y2) + size }),
              },
            ],
      ),
    ],
    picture,
    size,
  );
  const words = labels.map((label) => strokesOfWords(label.words, label.x, label.y, size)).join('');
  const under = (width: number) =>
    `fill="none" stroke="${ground}" stroke-opacity="0.7" stroke-width="${px(width)}"`;
  const over = (colour: string, width: number) =>
    `fill="none" stroke="${colour}" stroke-width="${px(width)}"`;
  const dash = ` stroke-dasharray="${px(size * 0.2)} ${px(size * 0.12)}"`;
  const lettering = `stroke-linecap="round" stroke-linejoin="round"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${widthPx}" height="${heightPx}">`,
    ...ruled.map(
      (d) =>
        `<path d="${d}" ${under(size * 0.16)}/><path d="${d}" ${over(ink, Math.max(1.3, size * 0.06))}/>`,
    ),
    ...crosses.map(
      ({ path, dashed }) =>
        `<path d="${path}" ${under(size * 0.24)}/><path d="${path}" ${over(markInk, size * 0.1)}${dashed ? dash : ''}/>`,
    ),
    // The letters are scaled, and their strokes with them: widths here are in twelfths of a line.
    `<g ${lettering} ${under(3.4)}>${words}</g><g ${lettering} ${over(ink, 1.15)}>${words}</g>`,
    '</svg>',
  ].join('');
}

const px = (value: number): string => value.toFixed(2);

function cross({ x, y }: Spot, size: number): string {
  const [gap, arm] = [size * 0.28, size * 0.85];
  return `M${px(x - arm)} ${px(y)}H${px(x - gap)}M${px(x + gap)} ${px(y)}H${px(x + arm)}M${px(x)} ${px(y - arm)}V${px(y - gap)}M${px(x)} ${px(y + gap)}V${px(y + arm)}`;
}

function ruledLine({ x1, y1, x2, y2 }: Overlay['lines'][number], tick: number): string {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [dx, dy] = [((y2 - y1) / long) * tick, (-(x2 - x1) / long) * tick];
  const end = (x: number, y: number) => `M${px(x - dx)} ${px(y - dy)}L${px(x + dx)} ${px(y + dy)}`;
  return `M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}${end(x1, y1)}${end(x2, y2)}`;
}
