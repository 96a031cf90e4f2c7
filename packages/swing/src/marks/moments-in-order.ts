import { type Position, positions } from './marks.ts';
import type { PlacedMarks } from './placed-marks.ts';

/**
 * Finds two moments that stand on frames in the wrong order.
 *
 * @param among - the moments that matter; those without a mark of their own say nothing
 * @returns the later moment and the earlier one that stands behind it, or null
 */
export function outOfOrder(
  marks: PlacedMarks,
  among: readonly Position[],
): { readonly later: Position; readonly earlier: Position } | null {
  let last: { readonly position: Position; readonly frame: number } | null = null;
  for (const position of positions) {
    if (!among.includes(position)) continue;
    const frame = marks.frameOf(position);
    if (frame === undefined) continue;
    if (last !== null && frame < last.frame) return { later: position, earlier: last.position };
    last = { position, frame };
  }
  return null;
}
