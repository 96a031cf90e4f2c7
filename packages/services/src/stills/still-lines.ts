type Marked = { readonly position: string; readonly point: string; readonly x: number; readonly y: number };

/** A ruled line over a picture, in its pixels, and what it is called to a student; the shaft needs no name. */
export type StillLine = {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
  readonly name: string | null;
};

/**
 * The lines that the marks of a clip give at one of its moments: the ball line of set-up stands at every moment, since
 * the camera does; the way of the hips goes from set-up to here; the shaft lies where it is now.
 *
 * @param heightPx of the picture, pixels
 */
export const stillLines = (
  marks: readonly Marked[],
  moment: string,
  heightPx: number,
): readonly StillLine[] => {
  const at = (position: string, point: string): Marked | undefined =>
    marks.find((mark) => mark.position === position && mark.point === point);
  const between = (from: Marked, to: Marked, name: string | null): StillLine => ({
    ...{ x1: from.x, y1: from.y, x2: to.x, y2: to.y, name },
  });
  const lines: StillLine[] = [];
  const [ball, head] = [at('address', 'ball'), at('address', 'head-centre')];
  if (ball !== undefined) {
    const top = Math.max(0, (head?.y ?? heightPx * 0.26) - heightPx * 0.06);
    lines.push({ x1: ball.x, y1: ball.y, x2: ball.x, y2: top, name: 'ball line' });
  }
  const [hipsThen, hipsNow] = [at('address', 'hip-middle'), at(moment, 'hip-middle')];
  if (moment !== 'address' && hipsThen !== undefined && hipsNow !== undefined) {
    lines.push(between(hipsThen, hipsNow, 'way of the hips'));
  }
  const [grip, club] = [at(moment, 'grip-end'), at(moment, 'clubhead')];
  if (grip !== undefined && club !== undefined) lines.push(between(club, grip, null));
  return lines;
};
