import type { Size } from '../rendition-size.ts';
import { widthOfWords } from './letters.ts';

export type Spot = { readonly x: number; readonly y: number };
/** Words with where their base line begins, in pixels. */
export type PlacedLabel = { readonly words: string; readonly x: number; readonly y: number };

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/**
 * Puts words beside their spots, on the outer side where there is room, and further down where they would run into words
 * that stand already or leave the picture.
 *
 * @param size - height of a line, pixels
 */
export function placeLabels(
  spots: readonly (Spot & { readonly words: string })[],
  picture: Size,
  size: number,
): readonly PlacedLabel[] {
  const taken: Box[] = [];
  // Letters have an outline, and a picture is often shown smaller: neither may be cut.
  const edge = size * 0.4;
  const middle = spots.reduce((sum, { x }) => sum + x, 0) / Math.max(1, spots.length);
  return [...spots]
    .sort((a, b) => a.y - b.y)
    .map(({ words, x, y }) => {
      const width = widthOfWords(words) * size;
      const [roomLeft, roomRight] = [x - size, picture.widthPx - x - size];
      const atRight = x >= middle ? roomRight >= width || roomRight >= roomLeft : roomLeft < width;
      const wanted = atRight ? x + size * 1.15 : x - size * 1.15 - width;
      const left = Math.min(Math.max(edge, picture.widthPx - width - edge), Math.max(edge, wanted));
      let top = Math.min(picture.heightPx - size * 1.3, Math.max(0, y - size / 2));
      for (const other of [...taken].sort((a, b) => a.top - b.top)) {
        const apart =
          left >= other.right || left + width <= other.left || top >= other.bottom || top + size <= other.top;
        if (!apart) top = other.bottom;
      }
      taken.push({ left, right: left + width, top, bottom: top + size });
      return { words, x: left, y: top + size * 0.8 };
    });
}
