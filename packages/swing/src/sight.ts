import { usualCamera } from './camera.ts';
import { clubAtAddress } from './club-at-address.ts';
import { focalFromClub } from './focal-from-club.ts';
import type { Inputs } from './inputs.ts';
import type { Picture, Setting } from './marks.ts';
import type { Place } from './place.ts';
import type { PlacedMarks } from './placed-marks.ts';

const ball: Place = { position: 'address', point: 'ball' };
const gripEnd: Place = { position: 'address', point: 'grip-end' };

/** Least rise of the grip end over the ball that can carry a scale, as a share of the picture's long side. */
const leastRise = 0.05;

/** How the picture is seen: each function reads its inputs from the vector that is being propagated. */
export type Sight = {
  readonly fromClub: boolean;
  focalPx(x: readonly number[]): number;
  distanceMm(x: readonly number[]): number;
  yawRad(x: readonly number[]): number;
  gripDepthMm(x: readonly number[]): number;
};

/** Whether the club at address can give these marks a scale. */
export function hasScale(marks: PlacedMarks, picture: Picture): boolean {
  const foot = marks.at(ball);
  const end = marks.at(gripEnd);
  if (foot === undefined || end === undefined) return false;
  return end.upPx - foot.upPx >= leastRise * Math.max(picture.widthPx, picture.heightPx);
}

/**
 * Adds the camera and the club to the inputs of a measurement. Without a club at address the usual field of a phone
 * stands in: good enough for ratios, not for millimetres.
 */
export function addSight(inputs: Inputs, marks: PlacedMarks, picture: Picture, setting: Setting): Sight {
  const camera = usualCamera;
  const club = clubAtAddress(setting.club);
  const known = (name: string, value: number, u: number) => inputs.add({ name, value, u, clicked: false });
  const distance = known('distance', camera.distanceMm, camera.uDistanceMm);
  const yaw = known('yaw', camera.yawDeg, camera.uYawDeg);
  const length = known('club-length', club.lengthMm, club.uLengthMm);
  const lie = known('lie', club.lieDeg, club.uLieDeg);
  const read = (x: readonly number[], index: number) => x[index] ?? Number.NaN;
  const common = {
    distanceMm: (x: readonly number[]) => read(x, distance),
    yawRad: (x: readonly number[]) => (read(x, yaw) * Math.PI) / 180,
    gripDepthMm: (x: readonly number[]) => read(x, length) * Math.cos((read(x, lie) * Math.PI) / 180),
  };
  const foot = marks.at(ball);
  const end = marks.at(gripEnd);
  if (!hasScale(marks, picture) || foot === undefined || end === undefined) {
    const half = Math.max(picture.widthPx, picture.heightPx) / 2;
    const usual = half / Math.tan((camera.longSideFieldDeg * Math.PI) / 360);
    const focal = known('focal', usual, usual * camera.uFocalShare);
    return { ...common, fromClub: false, focalPx: (x) => read(x, focal) };
  }
  const height = known('lens-height', camera.lensHeightMm, camera.uLensHeightMm);
  const footUp = inputs.add({ name: 'address/ball/up', value: foot.upPx, u: foot.uPx, clicked: true });
  const endUp = inputs.add({ name: 'address/grip-end/up', value: end.upPx, u: end.uPx, clicked: true });
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
