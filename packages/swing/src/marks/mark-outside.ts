import type { Mark, Picture } from './marks.ts';

export type MarkOutside = 'mark-outside-frame' | 'frame-outside-clip' | 'mark-not-a-number';

/**
 * Whether a mark lies where there is no picture.
 *
 * @param mark - pixels of the rendition and index of its frame
 * @param picture - size and frame times; the edges belong to the picture
 * @returns what is wrong, or null
 */
export function markOutside(mark: Mark, picture: Picture): MarkOutside | null {
  if (!Number.isFinite(mark.x) || !Number.isFinite(mark.y)) return 'mark-not-a-number';
  const inside = mark.x >= 0 && mark.x <= picture.widthPx && mark.y >= 0 && mark.y <= picture.heightPx;
  if (!inside) return 'mark-outside-frame';
  const known = Number.isInteger(mark.frame) && mark.frame >= 0 && mark.frame < picture.frameTimesS.length;
  return known ? null : 'frame-outside-clip';
}
