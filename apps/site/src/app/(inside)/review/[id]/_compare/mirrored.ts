import type { Part } from '../../../../../frames/draw-picture.ts';
import type { OverlayLine } from '../_stage/overlay-lines.ts';
import { partOf, type Size, type Zoom } from '../_stage/view-part.ts';

/** A line as it is seen in a mirror, in a picture of the same width. */
export const mirroredLine = (line: OverlayLine, { widthPx }: Size): OverlayLine => ({
  ...line,
  x1: widthPx - line.x1,
  x2: widthPx - line.x2,
});

/**
 * The part of another picture that lies where `zoom` looks in this one: as far along and as far down. `drawn` is what is
 * taken from the film, `seen` is the same in the picture as it is shown, turned over for a mirror.
 */
export const partBeside = (
  size: Size,
  zoom: Zoom,
  other: Size,
  mirror: boolean,
): { readonly drawn: Part; readonly seen: Part } => {
  const seen = partOf(other, {
    times: zoom.times,
    x: (zoom.x / size.widthPx) * other.widthPx,
    y: (zoom.y / size.heightPx) * other.heightPx,
  });
  return { seen, drawn: mirror ? { ...seen, x: other.widthPx - seen.x - seen.width } : seen };
};
