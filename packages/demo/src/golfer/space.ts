/**
 * Space of the invented golfer, in millimetres: x towards the target, y up from the ground, z from the player to the
 * camera. The ball lies on x = 0. Everything is computed right-handed; a left-hander is mirrored once, before the lens.
 *
 *        y
 *        |   (player)          face-on picture of a right-hander:
 *        |  /                  target on the right-hand side
 *        | /
 *        +------ x target
 *       /
 *      z camera
 */
export type Spot = { readonly x: number; readonly y: number; readonly z: number };

export const spot = (x: number, y: number, z: number): Spot => ({ x, y, z });

export const plus = (a: Spot, b: Spot, times = 1): Spot => ({
  x: a.x + times * b.x,
  y: a.y + times * b.y,
  z: a.z + times * b.z,
});

export const minus = (a: Spot, b: Spot): Spot => plus(a, b, -1);

export const lengthOf = (a: Spot): number => Math.hypot(a.x, a.y, a.z);

export const unitOf = (a: Spot): Spot => {
  const length = lengthOf(a);
  if (length === 0) throw new RangeError('A direction needs a length');
  return { x: a.x / length, y: a.y / length, z: a.z / length };
};

export const between = (a: Spot, b: Spot, share: number): Spot => plus(a, minus(b, a), share);

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
