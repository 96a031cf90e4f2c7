import { ironArc } from './constants.ts';
import type { StationObject } from './types.ts';

/** Ball and soft things may be met by the club; feet are the player's own. A stick is rigid. */
const rigid: ReadonlySet<StationObject['what']> = new Set(['stick']);

export const isRigid = (object: StationObject): boolean => rigid.has(object.what);

/** Higher than this it stands upright: soft or not, it is kept out of the club's way. Common practice, no source. */
export const uprightMm = 500;

/**
 * The shortest distance in mm between an object on the ground and the path of the clubhead: a circle of radius 1300 mm in
 * a plane 62 deg steep, lowest at the ball. Height above ground counts: a stick between the feet is far away.
 *
 * @see common practice for radius and plane; the rest is geometry
 */
export const arcClearanceMm = (object: StationObject): number => {
  const { radiusMm, planeDeg } = ironArc;
  const plane = (planeDeg * Math.PI) / 180;
  const turn = (object.rotationDeg * Math.PI) / 180;
  let nearestMm = Number.POSITIVE_INFINITY;
  for (let pastLowPointDeg = -180; pastLowPointDeg < 180; pastLowPointDeg += 1) {
    const psi = (pastLowPointDeg * Math.PI) / 180;
    const rise = radiusMm * (1 - Math.cos(psi));
    const clubX = radiusMm * Math.sin(psi) - object.xMm;
    const clubY = -rise * Math.cos(plane) - object.yMm;
    // Seen from the object's own axes its nearest point is a clamp away.
    const along = clubX * Math.cos(turn) + clubY * Math.sin(turn);
    const across = -clubX * Math.sin(turn) + clubY * Math.cos(turn);
    const overAlong = Math.max(0, Math.abs(along) - object.lengthMm / 2);
    const overAcross = Math.max(0, Math.abs(across) - object.widthMm / 2);
    const over = Math.max(0, rise * Math.sin(plane) - (object.heightMm ?? 0));
    nearestMm = Math.min(nearestMm, Math.hypot(overAlong, overAcross, over));
  }
  return nearestMm;
};
