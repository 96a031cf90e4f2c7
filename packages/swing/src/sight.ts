import { gradient } from '@ballfirst/numbers/gradient';
import { usualCamera } from './camera.ts';
import { clubAtAddress } from './club-at-address.ts';
import { clubInPicture } from './club-in-picture.ts';
import type { DepthBase } from './depth.ts';
import { focalFromClub } from './focal-from-club.ts';
import { focalFromClubBehind } from './focal-from-club-behind.ts';
import type { Picture, Setting } from './marks.ts';
import type { PlacedMarks } from './placed-marks.ts';

/** One uncertain input that all coordinates of a swing share. */
export type SightInput = {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  readonly clicked: boolean;
};

/** A number with what 1 SD of each input moves it. */
export type Felt = { readonly value: number; readonly effects: Float64Array };

/** How a picture is seen: where the lens stands, how it is turned, how long it is. */
export type Sight = {
  readonly inputs: readonly SightInput[];
  /** Which of the inputs are clicks. */
  readonly clicked: readonly boolean[];
  readonly fromClub: boolean;
  readonly focalPx: Felt;
  readonly distanceMm: Felt;
  readonly yawRad: Felt;
  readonly rollRad: Felt;
  /** Where a depth counts from, in mm beyond the ball. */
  readonly base: Readonly<Record<DepthBase, Felt>>;
  indexOf(name: string): number | undefined;
};

type Model = (x: readonly number[]) => number;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * The camera and the club of a swing. Without a club at address the usual field of a phone stands in: good enough for
 * ratios and angles, not for millimetres.
 */
export function sightOf(marks: PlacedMarks, picture: Picture, setting: Setting): Sight {
  const camera = usualCamera;
  const club = clubAtAddress(setting.club);
  const inputs: SightInput[] = [];
  const add = (name: string, value: number, u: number, clicked = false): Model => {
    const index = inputs.push({ name, value, u, clicked }) - 1;
    return (x) => x[index] ?? Number.NaN;
  };
  const distance = add('distance', camera.distanceMm, camera.uDistanceMm);
  const yaw = add('yaw', camera.yawDeg, camera.uYawDeg);
  const roll = add('roll', camera.rollDeg, camera.uRollDeg);
  const length = add('club-length', club.lengthMm, club.uLengthMm);
  const lie = add('lie', club.lieDeg, club.uLieDeg);
  const seen = clubInPicture(marks, picture, setting.view);

  const focal = (): Model => {
    if (seen === null) {
      const half = Math.max(picture.widthPx, picture.heightPx) / 2;
      const usual = half / Math.tan(radians(camera.longSideFieldDeg / 2));
      return add('focal', usual, usual * camera.uFocalShare);
    }
    const { end, foot } = seen;
    const footUp = add(`address/${seen.footPoint}/up`, foot.upPx, foot.uPx, true);
    const endUp = add(`address/${seen.endPoint}/up`, end.upPx, end.uPx, true);
    if (setting.view === 'face-on') {
      const height = add('lens-height', camera.lensHeightMm, camera.uLensHeightMm);
      return (x) =>
        focalFromClub({
          risePx: endUp(x) - footUp(x),
          clubLengthMm: length(x),
          lieDeg: lie(x),
          distanceMm: distance(x),
          lensHeightMm: height(x),
        });
    }
    const footLevel = add(`address/${seen.footPoint}/level`, foot.levelPx, foot.uPx, true);
    const endLevel = add(`address/${seen.endPoint}/level`, end.levelPx, end.uPx, true);
    const notSeen = add('club-not-seen', seen.notSeenMm, seen.uNotSeenMm);
    const lean = add('lean', camera.shaftLeanDeg, camera.uShaftLeanDeg);
    return (x) =>
      focalFromClubBehind({
        levelPx: endLevel(x) - footLevel(x),
        upPx: endUp(x) - footUp(x),
        lengthMm: length(x) - notSeen(x),
        leanDeg: lean(x),
        distanceMm: distance(x),
      });
  };
  const focalPx = focal();

  const x = inputs.map(({ value }) => value);
  const us = inputs.map(({ u }) => u);
  const steps = us.map((u) => u / 100);
  const felt = (model: Model): Felt => ({
    value: model(x),
    effects: Float64Array.from(gradient(model, x, steps), (slope, i) => slope * (us[i] ?? 0)),
  });
  const indexes = new Map(inputs.map(({ name }, i) => [name, i]));
  return {
    inputs,
    clicked: inputs.map((input) => input.clicked),
    fromClub: seen !== null,
    focalPx: felt(focalPx),
    distanceMm: felt(distance),
    yawRad: felt((at) => radians(yaw(at))),
    rollRad: felt((at) => radians(roll(at))),
    base: {
      ball: felt(() => 0),
      'grip-end': felt((at) => length(at) * Math.cos(radians(lie(at)))),
      'club-nearer': felt((at) => -length(at)),
    },
    indexOf: (name) => indexes.get(name),
  };
}
