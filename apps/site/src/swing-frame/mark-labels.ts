/** A mark of a frame: a point in the pixels of the picture, what it is and what a student calls it. */
export type Marked = {
  readonly point: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
};

/** Where the words of a mark stand: the end of the text that touches `x`, and the baseline. Pixels of the picture. */
export type MarkLabel = Marked & {
  readonly labelX: number;
  readonly labelY: number;
  readonly anchor: 'start' | 'end';
};

// Of the text at a size of 1: from memory, a little wide.
const letterOfSize = 0.56;

/**
 * Puts the words of each mark beside its cross, on the side with more room, and moves them down where they would run into
 * words that stand already.
 *
 * @param size - height of the text in pixels of the picture
 */
export const markLabels = (
  marks: readonly Marked[],
  picture: { readonly widthPx: number; readonly heightPx: number },
  size: number,
): readonly MarkLabel[] => {
  const taken: { left: number; right: number; y: number }[] = [];
  const middle = marks.reduce((sum, { x }) => sum + x, 0) / Math.max(1, marks.length);
  return [...marks]
    .sort((a, b) => a.y - b.y)
    .map((mark) => {
      const width = mark.name.length * size * letterOfSize;
      const room = picture.widthPx - mark.x;
      const atRight = mark.x >= middle ? room > width + size * 2 : mark.x < width + size * 2;
      const labelX = mark.x + (atRight ? size : -size);
      const [left, right] = atRight ? [labelX, labelX + width] : [labelX - width, labelX];
      let labelY = Math.min(picture.heightPx - size * 0.5, Math.max(size, mark.y + size * 0.35));
      for (const other of taken) {
        const crosses = left < other.right && other.left < right && Math.abs(labelY - other.y) < size * 1.2;
        if (crosses) labelY = other.y + size * 1.2;
      }
      taken.push({ left, right, y: labelY });
      return { ...mark, labelX, labelY, anchor: atRight ? 'start' : 'end' };
    });
};
