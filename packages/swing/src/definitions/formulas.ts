/** Where a point lies in the plane of the picture, by the arrows of `frame.ts`, in mm. */
export type Spot = { readonly level: number; readonly up: number };

/** How a number is made of the places of a definition, in their order. */
export type Formula = {
  /** How many places it reads. */
  readonly places: number;
  /** Which axes it reads. */
  readonly needs: 'level' | 'up' | 'both';
  readonly words: string;
  /** By what each place counts, where the formula is a sum along its one axis. */
  readonly weights?: readonly number[];
  of(spots: readonly Spot[]): number;
};

const none: Spot = { level: Number.NaN, up: Number.NaN };
const degrees = (radians: number): number => (radians * 180) / Math.PI;
const lean = (high: Spot, low: Spot) => degrees(Math.atan2(high.level - low.level, high.up - low.up));
const rise = (far: Spot, near: Spot) => degrees(Math.atan2(far.up - near.up, far.level - near.level));
/** An angle brought into -180..180 degrees. */
const turned = (angle: number) => angle - 360 * Math.round(angle / 360);

/**
 * The closed forms of all measurements.
 *
 * @source plane geometry; each is the definition of the quantity itself
 */
export const formulas = {
  apart: {
    places: 2,
    needs: 'level',
    words: 'level distance of the first from the second',
    weights: [1, -1],
    of: ([a = none, b = none]) => a.level - b.level,
  },
  raised: {
    places: 2,
    needs: 'up',
    words: 'height of the first over the second',
    weights: [1, -1],
    of: ([a = none, b = none]) => a.up - b.up,
  },
  lean: {
    places: 2,
    needs: 'both',
    words: 'angle from the vertical of the line from the second to the first',
    of: ([high = none, low = none]) => lean(high, low),
  },
  leanChange: {
    places: 4,
    needs: 'both',
    words: 'lean of the first pair less lean of the second pair',
    of: ([a = none, b = none, c = none, d = none]) => turned(lean(a, b) - lean(c, d)),
  },
  rise: {
    places: 2,
    needs: 'both',
    words: 'angle from the ground of the line from the second to the first',
    of: ([far = none, near = none]) => rise(far, near),
  },
  riseChange: {
    places: 4,
    needs: 'both',
    words: 'rise of the first pair less rise of the second pair',
    of: ([a = none, b = none, c = none, d = none]) => turned(rise(a, b) - rise(c, d)),
  },
  above: {
    places: 3,
    needs: 'both',
    words: 'distance of the first, square to the line from the second to the third, + on its upper side',
    of: ([p = none, from = none, to = none]) => {
      const level = to.level - from.level;
      const up = to.up - from.up;
      const square = level * (p.up - from.up) - up * (p.level - from.level);
      return (Math.sign(level) * square) / Math.hypot(level, up);
    },
  },
  corner: {
    places: 4,
    needs: 'both',
    words: 'angle between the line from the second to the first and the line from the third to the fourth',
    of: ([a = none, b = none, c = none, d = none]) => Math.abs(turned(rise(a, b) - rise(d, c))),
  },
  bend: {
    places: 3,
    needs: 'both',
    words:
      'angle at the second by which the three depart from one line, + where the second lies on the target side',
    of: ([a = none, b = none, c = none]) => turned(rise(a, b) - rise(c, b) - 180),
  },
} as const satisfies Record<string, Formula>;

export type FormulaName = keyof typeof formulas;
