import type { View } from '@ballfirst/swing/marks/marks';
import { type Mark, markAt } from '../_marking/marking.ts';
import type { Size } from './view-part.ts';

export const lineKinds = ['ball-line', 'ankle-middle', 'hips', 'shaft', 'seat-line', 'toe-line'] as const;
export type LineKind = (typeof lineKinds)[number];
/** A ruled line over the picture, in its pixels. */
export type OverlayLine = {
  readonly kind: LineKind;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
};

/** The lines that a view has to show. */
export const linesOfView = (view: View): readonly LineKind[] =>
  view === 'face-on' ? ['ball-line', 'ankle-middle', 'hips', 'shaft'] : ['shaft', 'seat-line', 'toe-line'];

type Spot = { readonly x: number; readonly y: number };
const between = (kind: LineKind, from: Spot, to: Spot): OverlayLine => ({
  kind,
  ...{ x1: from.x, y1: from.y, x2: to.x, y2: to.y },
});
const upright = (kind: LineKind, foot: Spot, top: number): OverlayLine =>
  between(kind, foot, { x: foot.x, y: top });

/** From behind the shaft of address is drawn on beyond the hands: what later shafts are seen against. */
const beyond = (from: Spot, through: Spot): Spot => ({
  x: through.x + (through.x - from.x) * 0.8,
  y: through.y + (through.y - from.y) * 0.8,
});

/**
 * The lines that the marks give at a moment: those of address stand at every moment, since the camera does; the shaft is
 * also drawn where its own moment is shown.
 */
export const overlayLines = (
  marks: readonly Mark[],
  view: View,
  moment: Mark['position'] | null,
  size: Size,
): readonly OverlayLine[] => {
  const address = (point: Mark['point']) => markAt(marks, { position: 'address', point });
  const lines: OverlayLine[] = [];
  const [ball, grip, head] = [address('ball'), address('grip-end'), address('head-centre')];
  const top = head === undefined ? size.heightPx * 0.2 : head.y - size.heightPx * 0.06;
  if (view === 'face-on') {
    const [lead, trail] = [address('lead-ankle'), address('trail-ankle')];
    if (ball !== undefined) lines.push(upright('ball-line', ball, Math.max(0, top)));
    if (lead !== undefined && trail !== undefined) {
      const foot = { x: (lead.x + trail.x) / 2, y: (lead.y + trail.y) / 2 };
      const hip = address('hip-middle')?.y ?? foot.y - size.heightPx * 0.3;
      lines.push(upright('ankle-middle', foot, hip));
    }
    const hips = marks.filter(({ point }) => point === 'hip-middle').sort((a, b) => a.frame - b.frame);
    for (const [index, hip] of hips.entries()) {
      const before = hips[index - 1];
      if (before !== undefined) lines.push(between('hips', before, hip));
    }
  } else {
    for (const kind of ['seat-line', 'toe-line'] as const) {
      const foot = address(kind);
      const rise = kind === 'seat-line' ? 0.22 : 0.12;
      if (foot === undefined) continue;
      const below = kind === 'seat-line' ? size.heightPx * 0.12 : 0;
      lines.push(upright(kind, { x: foot.x, y: foot.y + below }, foot.y - size.heightPx * rise));
    }
  }
  const foot = address('clubhead') ?? ball;
  if (grip !== undefined && foot !== undefined)
    lines.push(between('shaft', foot, view === 'face-on' ? grip : beyond(foot, grip)));
  if (moment !== null && moment !== 'address') {
    const [end, club] = (['grip-end', 'clubhead'] as const).map((point) =>
      markAt(marks, { position: moment, point }),
    );
    if (end !== undefined && club !== undefined) lines.push(between('shaft', club, end));
  }
  return lines;
};
