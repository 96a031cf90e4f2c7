import { type Placed, unitsPerMm } from './station-plan.ts';

/** A distance from the ball, drawn as a ruled line: along the target line or square to it. */
export type Distance = { readonly along: 'u' | 'v'; readonly to: number; readonly mm: number };

const isBall = ({ object }: Placed): boolean => object.what === 'ball' || object.what === 'soft-ball';
const isFoot = ({ object }: Placed): boolean => object.what === 'lead-foot' || object.what === 'trail-foot';

/** Balls are measured to their middle, everything else to its near edge. */
const nearest = (placed: Placed, along: 'u' | 'v'): number => {
  const [middle, first, last] =
    along === 'u'
      ? [placed.u, placed.box.left, placed.box.right]
      : [placed.v, placed.box.top, placed.box.bottom];
  if (isBall(placed)) return middle;
  return Math.abs(first) < Math.abs(last) ? first : last;
};

const leastUnits = 20;

/**
 * The distances worth drawing: what lies on the target line before or behind the ball, and what lies square to it on the
 * player's side. Feet have none: they follow the body.
 */
export const stationDistances = (all: readonly Placed[]): readonly Distance[] => {
  const found = all.flatMap((placed): Distance[] => {
    const { box } = placed;
    if (isFoot(placed)) return [];
    const onLine = box.top <= 0 && box.bottom >= 0;
    const square = box.left <= 0 && box.right >= 0;
    if (onLine === square) return [];
    const along = onLine ? 'u' : 'v';
    const to = nearest(placed, along);
    return Math.abs(to) < leastUnits || (along === 'v' && to < 0)
      ? []
      : [{ along, to, mm: Math.abs(to) / unitsPerMm }];
  });
  return found.filter(
    (one, index) =>
      found.findIndex((other) => other.along === one.along && Math.sign(other.to) === Math.sign(one.to)) ===
      index,
  );
};

/** Millimetres as centimetres in words, half centimetres kept. */
export const centimetres = (mm: number): string => {
  const halves = Math.round(mm / 5) / 2;
  return Number.isInteger(halves) ? String(halves) : halves.toFixed(1);
};
