import { plus, radians, type Spot, spot } from './space.ts';

/** A plane that slopes up towards the player, turned about the vertical: + directions lead right of the target. */
export type SwingPlane = { readonly along: Spot; readonly up: Spot };

/** @param slopeDeg angle to the ground, @param directionDeg of its level line against the target line */
export function swingPlane(slopeDeg: number, directionDeg: number): SwingPlane {
  const slope = radians(slopeDeg);
  const turn = radians(directionDeg);
  return {
    along: spot(Math.cos(turn), 0, Math.sin(turn)),
    up: spot(Math.cos(slope) * Math.sin(turn), Math.sin(slope), -Math.cos(slope) * Math.cos(turn)),
  };
}

/** Direction of a rod in the plane, turned by an angle from straight down it towards the target. */
export const rodAt = (plane: SwingPlane, angleRad: number): Spot =>
  plus(plus(spot(0, 0, 0), plane.along, Math.sin(angleRad)), plane.up, -Math.cos(angleRad));
