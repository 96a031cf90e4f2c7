/**
 * Small letters as single strokes, as one letters a drawing by hand: pictures then look the same on a machine without any
 * typeface. Base line at 0, body up to -5, risers up to -8, tails down to 2.4; `width` without the gap to the next.
 */
type Letter = { readonly width: number; readonly stroke: string };

const bowl = 'M4-2.5A2 2.5 0 1 1 0-2.5A2 2.5 0 1 1 4-2.5';
const letter = (width: number, stroke: string): Letter => ({ width, stroke });

const letters: Readonly<Record<string, Letter>> = {
  a: letter(4, `${bowl}M4-5V0`),
  b: letter(4, `M0-8V0${bowl}`),
  c: letter(3.6, 'M3.6-4.1A2 2.5 0 1 0 3.6-0.9'),
  d: letter(4, `${bowl}M4-8V0`),
  e: letter(4, 'M0-2.6H4A2 2.5 0 1 0 3.6-0.8'),
  f: letter(3, 'M3.2-7.7Q1.4-8.4 1.4-6V0M0-5H3'),
  g: letter(4, `${bowl}M4-5V0.4Q4 2.4 2 2.4Q0.9 2.4 0.3 1.7`),
  h: letter(4, 'M0-8V0M0-3Q0.6-5 2.2-5Q4-5 4-3V0'),
  i: letter(0.6, 'M0.3-5V0M0.3-7.3V-6.8'),
  j: letter(1.4, 'M1-5V0.9Q1 2.4-0.4 2.4M1-7.3V-6.8'),
  k: letter(3.8, 'M0-8V0M3.6-5L0-1.8M1.4-3L3.8 0'),
  l: letter(1, 'M0-8V-1Q0 0 1 0'),
  m: letter(6, 'M0-5V0M0-3.2Q0.5-5 1.7-5Q3-5 3-3.2V0M3-3.2Q3.5-5 4.7-5Q6-5 6-3.2V0'),
  n: letter(4, 'M0-5V0M0-3Q0.6-5 2.2-5Q4-5 4-3V0'),
  o: letter(4, bowl),
  p: letter(4, `M0-5V2.4${bowl}`),
  q: letter(4, `${bowl}M4-5V2.4`),
  r: letter(2.6, 'M0-5V0M0-2.8Q0.6-5 2.6-4.9'),
  s: letter(
    3.6,
    'M3.4-4.2Q2.8-5 1.8-5Q0.2-5 0.2-3.8Q0.2-2.8 1.8-2.5Q3.6-2.2 3.6-1.2Q3.6 0 1.8 0Q0.6 0 0-0.8',
  ),
  t: letter(2.9, 'M1.4-7V-1.2Q1.4 0 2.8-0.1M0-5H3'),
  u: letter(4, 'M0-5V-2Q0 0 1.8 0Q3.4 0 4-2M4-5V0'),
  v: letter(4, 'M0-5L2 0L4-5'),
  w: letter(6, 'M0-5L1.5 0L3-4.4L4.5 0L6-5'),
  x: letter(4, 'M0-5L4 0M4-5L0 0'),
  y: letter(4, 'M0-5L2.1-0.2M4-5L1.6 1.4Q1.2 2.4 0 2.4'),
  z: letter(4, 'M0-5H4L0 0H4'),
  ' ': letter(2.2, ''),
};
/** Stands for whatever has no letter here. */
const other = letter(2.6, 'M0-2.6H2.6');
const gap = 1.5;
/** Height of a letter with a riser, of the height of a line. */
const unitsALine = 12;

const lettersOf = (words: string): readonly Letter[] =>
  [...words.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()].map((one) => letters[one] ?? other);

/** How wide words are, for a height of line of 1. */
export const widthOfWords = (words: string): number => {
  const all = lettersOf(words);
  return all.reduce((sum, { width }) => sum + width + gap, all.length === 0 ? 0 : -gap) / unitsALine;
};

/** The strokes of words as groups of SVG, their base line beginning at a place; `size` is the height of a line. */
export function strokesOfWords(words: string, x: number, y: number, size: number): string {
  const scale = size / unitsALine;
  let at = 0;
  return lettersOf(words)
    .map(({ width, stroke }) => {
      const placed = `translate(${(x + at * scale).toFixed(1)} ${y.toFixed(1)}) scale(${scale.toFixed(3)})`;
      at += width + gap;
      return stroke === '' ? '' : `<path transform="${placed}" d="${stroke}"/>`;
    })
    .join('');
}
