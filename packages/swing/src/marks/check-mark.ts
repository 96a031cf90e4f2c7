import { type MarkOutside, markOutside } from './mark-outside.ts';
import type { Mark, Picture } from './marks.ts';

export class MarkOutsideError extends RangeError {
  override readonly name = 'MarkOutsideError';
  readonly code: MarkOutside;
  readonly mark: Mark;

  constructor(code: MarkOutside, mark: Mark, message: string) {
    super(message);
    this.code = code;
    this.mark = mark;
  }
}

const sentence = (code: MarkOutside, mark: Mark, picture: Picture) => {
  if (code === 'mark-not-a-number') return `The ${mark.point} mark has no place: its x or y is not a number.`;
  if (code === 'mark-outside-frame') {
    return `The ${mark.point} mark at ${mark.x}, ${mark.y} lies outside the picture of ${picture.widthPx} by ${picture.heightPx} pixels.`;
  }
  return `The ${mark.point} mark names frame ${mark.frame}, but the clip has ${picture.frameTimesS.length} frames.`;
};

/**
 * Lets a mark pass that lies on the picture.
 *
 * @throws MarkOutsideError (a RangeError) with a code when the mark or its frame lies outside
 */
export function checkMark(mark: Mark, picture: Picture): void {
  const code = markOutside(mark, picture);
  if (code !== null) throw new MarkOutsideError(code, mark, sentence(code, mark, picture));
}
