import { inLines } from '../words/in-lines.ts';

/** A mark of a frame: a point in the pixels of the picture, what it is and what a student calls it. */
export type Marked = {
  readonly point: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
};

/** The words of a mark in lines; `labelX`: the end that touches the cross, `labelY`: the first baseline, in pixels. */
export type MarkLabel = Marked & {
  readonly lines: readonly string[];
  readonly labelX: number;
  readonly labelY: number;
  readonly anchor: 'start' | 'end';
};

// Of the text at a size of 1: from memory, a little wide.
const letterOfSize = 0.56;
const mostLetters = 10;

/** Height of a line of words, of the height of its text. */
export const lineOfSize = 1.15;

type Taken = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/**
 * Puts the words of each mark beside its cross, away from the other marks where there is room, and moves them down where
 * they would run into words that stand already.
 *
 * @param size - height of the text in pixels of the picture
 */
export const markLabels = (
  marks: readonly Marked[],
  picture: { readonly widthPx: number; readonly heightPx: number },
  size: number,
): readonly MarkLabel[] => {
  const taken: Taken[] = [];
  const middle = marks.reduce((sum, { x }) => sum + x, 0) / Math.max(1, marks.length);
  return [...marks]
    .sort((a, b) => a.y - b.y)
    .map((mark) => {
      const lines = inLines(mark.name, mostLetters);
      const width = Math.max(...lines.map((line) => line.length)) * size * letterOfSize;
      const height = lines.length * size * lineOfSize;
      const [roomLeft, roomRight] = [mark.x - size, picture.widthPx - mark.x - size];
      const atRight = mark.x >= middle ? roomRight >= width || roomRight >= roomLeft : roomLeft < width;
      const labelX = mark.x + (atRight ? size : -size);
      const [left, right] = atRight ? [labelX, labelX + width] : [labelX - width, labelX];
      let top = Math.min(picture.heightPx - height, Math.max(0, mark.y - height / 2));
      for (const other of taken) {
        const apart =
          left >= other.right || right <= other.left || top >= other.bottom || top + height <= other.top;
        if (!apart) top = other.bottom;
      }
      taken.push({ left, right, top, bottom: top + height });
      return { ...mark, lines, labelX, labelY: top + size * 0.9, anchor: atRight ? 'start' : 'end' };
    });
};
