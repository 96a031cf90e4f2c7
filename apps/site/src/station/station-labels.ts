import { inLines } from '../words/in-lines.ts';
import { type Box, overlap, type Placed } from './station-plan.ts';

/** Words beside an object: its lines, the middle of the first baseline, and the box that they fill. */
export type Label = {
  readonly lines: readonly string[];
  readonly u: number;
  readonly v: number;
  readonly box: Box;
};

// Of the text at 12 units: from memory, a little wide so that words never run into one another.
const unitsPerLetter = 6.4;
const lineUnits = 15;
const mostLetters = 15;
const gap = 6;

const boxAt = (u: number, v: number, width: number, height: number): Box => ({
  left: u - width / 2,
  right: u + width / 2,
  top: v - height / 2,
  bottom: v + height / 2,
});

/** Where words of this size may stand: within a large object, then below, beside and above it, then farther off. */
const places = ({ box, u, v }: Placed, width: number, height: number): readonly Box[] => {
  const within = box.right - box.left > width + gap && box.bottom - box.top > height + gap;
  const beside = [0, 1, 2, 3].flatMap((step) => {
    const off = gap + step * 14;
    const [below, above] = [box.bottom + off + height / 2, box.top - off - height / 2];
    const [fromLeft, fromRight] = [box.left + width / 2, box.right - width / 2];
    return [
      boxAt(u, below, width, height),
      boxAt(box.right + off + width / 2, v, width, height),
      boxAt(box.left - off - width / 2, v, width, height),
      boxAt(u, above, width, height),
      ...[fromLeft, fromRight].flatMap((at) => [
        boxAt(at, below, width, height),
        boxAt(at, above, width, height),
      ]),
    ];
  });
  return within ? [boxAt(u, box.top + (box.bottom - box.top) * 0.28, width, height), ...beside] : beside;
};

/** Sets one label an object, the same words once only, so that none covers an object, a distance or other words. */
export const placeLabels = (all: readonly Placed[], taken: readonly Box[], sheet: Box): readonly Label[] => {
  const labels: Label[] = [];
  const free = (box: Box, own: Box): boolean => {
    const inSheet =
      box.left >= sheet.left &&
      box.right <= sheet.right &&
      box.top >= sheet.top &&
      box.bottom <= sheet.bottom;
    const others = all.map((placed) => placed.box).filter((other) => other !== own);
    return (
      inSheet && ![...others, ...taken, ...labels.map((label) => label.box)].some((it) => overlap(it, box))
    );
  };
  const seen = new Set<string>();
  for (const placed of [...all].reverse()) {
    const words = placed.object.label;
    if (seen.has(words)) continue;
    seen.add(words);
    const lines = inLines(words, mostLetters);
    const width = Math.max(...lines.map((line) => line.length)) * unitsPerLetter;
    const height = lines.length * lineUnits;
    const choices = places(placed, width, height);
    const box = choices.find((choice) => free(choice, placed.box)) ?? choices[0];
    if (box === undefined) continue;
    labels.push({ lines, u: (box.left + box.right) / 2, v: box.top + 11, box });
  }
  return labels;
};

export const labelLineUnits = lineUnits;
