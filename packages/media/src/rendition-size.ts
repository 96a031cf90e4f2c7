/** A width and a height in pixels. */
export type Size = { readonly widthPx: number; readonly heightPx: number };

/**
 * The size scaled down so that its long side fits, never up; both sides even, as 4:2:0 pictures need.
 *
 * @param longSidePx the longest side allowed, pixels
 */
export function fittedSize(size: Size, longSidePx: number): Size {
  const scale = Math.min(1, longSidePx / Math.max(size.widthPx, size.heightPx));
  const even = (px: number) => Math.max(16, 2 * Math.round((px * scale) / 2));
  return { widthPx: even(size.widthPx), heightPx: even(size.heightPx) };
}
