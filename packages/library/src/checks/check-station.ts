import { arcClearanceMm, isRigid, uprightMm } from '../arc-clearance.ts';
import { arcHeightBehindMm } from '../arc-height.ts';
import { equipment, obstacleHeightsMm, rigidClearanceMm, towelClearanceMm } from '../constants.ts';
import type { Drill, Station, StationObject } from '../types.ts';

/** A soft obstacle behind the ball that even a sound swing would touch. */
const inTheWayOfSound = (object: StationObject): boolean => {
  const heightMm = obstacleHeightsMm[object.what];
  const nearEdgeMm = -(object.xMm + object.lengthMm / 2);
  return heightMm !== undefined && nearEdgeMm > 0 && arcHeightBehindMm(nearEdgeMm) < heightMm;
};

/** What is wrong with one station of a drill, as sentences; none is well. */
export const checkStation = (station: Station, drill: Drill): readonly string[] => {
  const problems: string[] = [];
  const at = `station "${station.place}"`;
  if (station.steps.length === 0) problems.push(`${at} has no steps`);
  if (station.objects.length === 0) problems.push(`${at} has no objects`);
  for (const need of station.needs) {
    if (!Object.hasOwn(equipment, need)) problems.push(`${at} needs unknown equipment "${need}"`);
  }
  for (const object of station.objects) {
    if (!(object.lengthMm > 0 && object.widthMm > 0)) problems.push(`${at}: "${object.label}" has no size`);
    if (isRigid(object) && arcClearanceMm(object) < rigidClearanceMm) {
      problems.push(`${at}: rigid "${object.label}" lies within 30 cm of the club's path`);
    }
    if ((object.heightMm ?? 0) > uprightMm && arcClearanceMm(object) < rigidClearanceMm) {
      problems.push(`${at}: upright "${object.label}" stands within 30 cm of the club's path`);
    }
    if (inTheWayOfSound(object)) problems.push(`${at}: a sound swing would touch "${object.label}"`);
    if (object.what === 'ball' && (object.xMm !== 0 || object.yMm !== 0)) {
      problems.push(`${at}: a hard ball lies anywhere but at the ball spot`);
    }
    if (object.what === 'towel' && object.xMm + object.lengthMm / 2 > -towelClearanceMm) {
      problems.push(`${at}: the towel begins less than 10 cm behind the ball`);
    }
  }
  if (station.lastRung !== undefined && !drill.ladder.some((rung) => rung.id === station.lastRung)) {
    problems.push(`${at} ends at rung "${station.lastRung}", which is not on the ladder`);
  }
  const struckIndoors = station.place === 'home' && station.objects.some((object) => object.what === 'ball');
  if (struckIndoors && drill.ladder.some((rung) => rung.ball))
    problems.push(`${at} strikes a hard ball at home`);
  if (station.place === 'mat' && (station.ballsAtMost ?? drill.ballsAtMost) > 30) {
    problems.push(`${at} allows more than 30 swings on a hard mat`);
  }
  return problems;
};
