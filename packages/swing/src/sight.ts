import { usualCamera } from './camera.ts';
import { clubAtAddress } from './club-at-address.ts';
import { clubInPicture } from './club-in-picture.ts';
import type { DepthBase } from './depth.ts';
import { focalFromClub } from './focal-from-club.ts';
import { focalFromClubBehind } from './focal-from-club-behind.ts';
import type { Inputs } from './inputs.ts';
import type { Picture, Setting } from './marks.ts';
import type { PlacedMark, PlacedMarks } from './placed-marks.ts';

/** How the picture is seen: each function reads its inputs from the vector that is being propagated. */
export type Sight = {
  readonly fromClub: boolean;
  focalPx(x: readonly number[]): number;
  distanceMm(x: readonly number[]): number;
  yawRad(x: readonly number[]): number;
  rollRad(x: readonly number[]): number;
  /** Where a depth counts from, in mm beyond the ball. */
  baseMm(from: DepthBase, x: readonly number[]): number;
};

const read = (x: readonly number[], index: number) => x[index] ?? Number.NaN;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * Adds the camera and the club to the inputs of a measurement. Without a club at address the usual field of a phone
 * stands in: good enough for ratios and angles, not for millimetres.
 */
export function addSight(inputs: Inputs, marks: PlacedMarks, picture: Picture, setting: Setting): Sight {
  const camera = usualCamera;
  const club = clubAtAddress(setting.club);
  const known = (name: string, value: number, u: number) => inputs.add({ name, value, u, clicked: false });
  const clicked = (name: string, value: number, mark: PlacedMark) =>
    inputs.add({ name, value, u: mark.uPx, clicked: true });
  const distance = known('distance', camera.distanceMm, camera.uDistanceMm);
  const yaw = known('yaw', camera.yawDeg, camera.uYawDeg);
  const roll = known('roll', camera.rollDeg, camera.uRollDeg);
  const length = known('club-length', club.lengthMm, club.uLengthMm);
  const faceOn = setting.view === 'face-on';
  const lie = faceOn ? known('lie', club.lieDeg, club.uLieDeg) : -1;
  const common = {
    distanceMm: (x: readonly number[]) => read(x, distance),
    yawRad: (x: readonly number[]) => radians(read(x, yaw)),
    rollRad: (x: readonly number[]) => radians(read(x, roll)),
    baseMm: (from: DepthBase, x: readonly number[]) => {
      if (from === 'ball') return 0;
      return from === 'grip-end' ? read(x, length) * Math.cos(radians(read(x, lie))) : -read(x, length);
    },
  };
  const seen = clubInPicture(marks, picture, setting.view);
  if (seen === null) {
    const half = Math.max(picture.widthPx, picture.heightPx) / 2;
    const usual = half / Math.tan(radians(camera.longSideFieldDeg / 2));
    const focal = known('focal', usual, usual * camera.uFocalShare);
    return { ...common, fromClub: false, focalPx: (x) => read(x, focal) };
  }
  const footName = `address/${seen.footPoint}`;
  const endName = `address/${seen.endPoint}`;
  const footUp = clicked(`${footName}/up`, seen.foot.upPx, seen.foot);
  const endUp = clicked(`${endName}/up`, seen.end.upPx, seen.end);
  if (faceOn) {
    const height = known('lens-height', camera.lensHeightMm, camera.uLensHeightMm);
    return {
      ...common,
      fromClub: true,
      focalPx: (x) =>
        focalFromClub({
          risePx: read(x, endUp) - read(x, footUp),
          clubLengthMm: read(x, length),
          lieDeg: read(x, lie),
          distanceMm: read(x, distance),
          lensHeightMm: read(x, height),
        }),
    };
  }
  const footLevel = clicked(`${footName}/level`, seen.foot.levelPx, seen.foot);
  const endLevel = clicked(`${endName}/level`, seen.end.levelPx, seen.end);
  const missing = known('club-not-seen', seen.notSeenMm, seen.uNotSeenMm);
  const lean = known('lean', camera.shaftLeanDeg, camera.uShaftLeanDeg);
  return {
    ...common,
    fromClub: true,
    focalPx: (x) =>
      focalFromClubBehind({
        levelPx: read(x, endLevel) - read(x, footLevel),
        upPx: read(x, endUp) - read(x, footUp),
        lengthMm: read(x, length) - read(x, missing),
        leanDeg: read(x, lean),
        distanceMm: read(x, distance),
      }),
  };
}
