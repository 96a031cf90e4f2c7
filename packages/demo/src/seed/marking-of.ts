import { drawNormal } from '@ballfirst/numbers/draw-normal';
import { drawOf } from './draw.ts';
import type { KeptFiles } from './kept-files.ts';
import { marksOf } from './marks-of.ts';

/** 1 SD of a click on a fast clubhead in a picture 1080 wide, pixels; one in ten is three times as far off. */
const clickAt1080 = 2;

/**
 * What a coach puts on a clip: the first pass, and face-on the stick and the clubhead on frames near the ball, clicked by
 * a hand that is not quite steady.
 *
 * @param of - words of this one swing: the same words click the same
 */
export const markingOf = ({ truth, trail }: Pick<KeptFiles, 'truth' | 'trail'>, of: string) => {
  if (trail.length === 0) return { marks: marksOf(truth), trail: [] };
  const draw = drawOf(`trail ${of}`);
  const s = (clickAt1080 * Math.min(truth.width, truth.height)) / 1080;
  const click = () => s * (draw.next() < 0.1 ? 3 : 1) * drawNormal(draw.next);
  const tenth = (value: number, most: number) => Math.min(most, Math.max(0, Math.round(10 * value) / 10));
  const stick = (['target-stick', 'target-stick-ahead'] as const).map((point) => {
    const [x, y] = truth.points.address[point];
    const frame = truth.positions.address;
    return { position: 'address' as const, point, frame, x, y, source: 'coach' as const };
  });
  return {
    marks: [...marksOf(truth), ...stick],
    trail: trail.map(([frame, x, y]) => ({
      frame,
      x: tenth(x + click(), truth.width - 1),
      y: tenth(y + click(), truth.height - 1),
    })),
  };
};
