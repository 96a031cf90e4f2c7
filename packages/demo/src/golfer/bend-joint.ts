import { lengthOf, minus, plus, type Spot, unitOf } from './space.ts';

/**
 * The middle joint (knee, elbow) of a limb of two bones between two ends, bent towards `pole`.
 *
 * @param upperMm length of the bone at `from`, @param lowerMm length of the bone at `to`
 * @returns the joint; on the straight line when the ends are farther apart than the bones reach
 */
export function bendJoint(from: Spot, to: Spot, upperMm: number, lowerMm: number, pole: Spot): Spot {
  const line = minus(to, from);
  const distance = lengthOf(line);
  const along = unitOf(line);
  const reach = upperMm + lowerMm;
  if (distance >= reach) return plus(from, along, (distance * upperMm) / reach);
  const foot = (upperMm ** 2 - lowerMm ** 2 + distance ** 2) / (2 * distance);
  const height = Math.sqrt(Math.max(0, upperMm ** 2 - foot ** 2));
  const dot = pole.x * along.x + pole.y * along.y + pole.z * along.z;
  const across = plus(pole, along, -dot);
  if (lengthOf(across) < 1e-9) return plus(from, along, foot);
  return plus(plus(from, along, foot), unitOf(across), height);
}
