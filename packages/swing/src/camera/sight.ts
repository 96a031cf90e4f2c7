import { gradient } from '@ballfirst/numbers/gradient';
import type { Picture, Setting } from '../marks/marks.ts';
import type { PlacedMark, PlacedMarks } from '../marks/placed-marks.ts';
import { usualCamera } from './camera.ts';
import { clubAtAddress } from './club-at-address.ts';
import { type ClubInPicture, clubInPicture } from './club-in-picture.ts';
import type { DepthBase } from './depth.ts';
import { focalFromClub } from './focal-from-club.ts';
import { focalFromClubBehind } from './focal-from-club-behind.ts';
import { stickEnds, stickTilt, usualStick } from './stick-tilt.ts';

export type ScaleFrom = 'stick' | 'club-at-address';

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
  /** What gives millimetres; null where only ratios and angles can be told. */
  readonly scaleFrom: ScaleFrom | null;
  readonly focalPx: Felt;
  readonly distanceMm: Felt;
  readonly yawRad: Felt;
  readonly uYawRad: number;
  readonly rollRad: Felt;
  /** Where a depth counts from, in mm beyond the ball. */
  readonly base: Readonly<Record<DepthBase, Felt>>;
};

type Model = (x: readonly number[]) => number;
const radians = (degrees: number) => (degrees * Math.PI) / 180;

type Adding = {
  readonly inputs: SightInput[];
  known(name: string, value: number, u: number): Model;
  clicked(name: string, value: number, mark: PlacedMark): Model;
};

function newInputs(): Adding {
  const inputs: SightInput[] = [];
  const add = (input: SightInput): Model => {
    const there = inputs.findIndex(({ name }) => name === input.name);
    const index = there >= 0 ? there : inputs.push(input) - 1;
    return (x) => x[index] ?? Number.NaN;
  };
  return {
    inputs,
    known: (name, value, u) => add({ name, value, u, clicked: false }),
    clicked: (name, value, { uPx }) => add({ name, value, u: uPx, clicked: true }),
  };
}

const lensHeight = ({ known }: Adding) =>
  known('lens-height', usualCamera.lensHeightMm, usualCamera.uLensHeightMm);

/** The stick on the target line: its length gives the scale, and what it leans in the picture is roll and yaw. */
function seenByStick(adding: Adding, marks: PlacedMarks, distance: Model, yaw: Model) {
  const [near, ahead] = [marks.at(stickEnds.near), marks.at(stickEnds.ahead)];
  if (near === undefined || ahead === undefined || stickTilt(marks) === null) return null;
  const apart = (axis: 'level' | 'up') => {
    const px = axis === 'level' ? 'levelPx' : 'upPx';
    const from = adding.clicked(`address/target-stick/${axis}`, near[px], near);
    const to = adding.clicked(`address/target-stick-ahead/${axis}`, ahead[px], ahead);
    return (x: readonly number[]) => to(x) - from(x);
  };
  const [level, up] = [apart('level'), apart('up')];
  const length = adding.known('stick-length', usualStick.lengthMm, usualStick.uLengthMm);
  const height = lensHeight(adding);
  return {
    focal: (x: readonly number[]) => (distance(x) * Math.hypot(level(x), up(x))) / length(x),
    // A lens above the ground sees a line that runs away from it rise.
    roll: (x: readonly number[]) => Math.atan2(up(x), level(x)) - (height(x) / distance(x)) * yaw(x),
  };
}

function focalOfClub(adding: Adding, seen: ClubInPicture, faceOn: boolean, club: ClubModels): Model {
  const { end, foot } = seen;
  const footUp = adding.clicked(`address/${seen.footPoint}/up`, foot.upPx, foot);
  const endUp = adding.clicked(`address/${seen.endPoint}/up`, end.upPx, end);
  if (faceOn) {
    const height = lensHeight(adding);
    return (x) =>
      focalFromClub({
        risePx: endUp(x) - footUp(x),
        clubLengthMm: club.length(x),
        lieDeg: club.lie(x),
        distanceMm: club.distance(x),
        lensHeightMm: height(x),
      });
  }
  const footLevel = adding.clicked(`address/${seen.footPoint}/level`, foot.levelPx, foot);
  const endLevel = adding.clicked(`address/${seen.endPoint}/level`, end.levelPx, end);
  const notSeen = adding.known('club-not-seen', seen.notSeenMm, seen.uNotSeenMm);
  const lean = adding.known('lean', usualCamera.shaftLeanDeg, usualCamera.uShaftLeanDeg);
  return (x) =>
    focalFromClubBehind({
      levelPx: endLevel(x) - footLevel(x),
      upPx: endUp(x) - footUp(x),
      lengthMm: club.length(x) - notSeen(x),
      leanDeg: lean(x),
      distanceMm: club.distance(x),
    });
}
type ClubModels = { readonly length: Model; readonly lie: Model; readonly distance: Model };

function usualFocal({ known }: Adding, picture: Picture): Model {
  const half = Math.max(picture.widthPx, picture.heightPx) / 2;
  const usual = half / Math.tan(radians(usualCamera.longSideFieldDeg / 2));
  return known('focal', usual, usual * usualCamera.uFocalShare);
}

/**
 * The camera of a swing, from a stick on the target line, else from the club at address, else the usual field of a
 * phone: good enough for ratios and angles, not for millimetres.
 *
 * @param without - a source to leave out, for comparing it with the other
 */
export function sightOf(
  marks: PlacedMarks,
  picture: Picture,
  setting: Setting,
  without: 'stick' | null = null,
): Sight {
  const camera = usualCamera;
  const usual = clubAtAddress(setting.club);
  const adding = newInputs();
  const { inputs, known } = adding;
  const faceOn = setting.view === 'face-on';
  const distance = known('distance', camera.distanceMm, camera.uDistanceMm);
  const yawDeg = known('yaw', camera.yawDeg, camera.uYawDeg);
  const yaw: Model = (x) => radians(yawDeg(x));
  const length = known('club-length', usual.lengthMm, usual.uLengthMm);
  const lie = known('lie', usual.lieDeg, usual.uLieDeg);
  const stick = faceOn && without !== 'stick' ? seenByStick(adding, marks, distance, yaw) : null;
  const club = stick ? null : clubInPicture(marks, picture, setting.view);
  const focal =
    stick?.focal ??
    (club === null
      ? usualFocal(adding, picture)
      : focalOfClub(adding, club, faceOn, { length, lie, distance }));
  const rollDeg = stick ? null : known('roll', camera.rollDeg, camera.uRollDeg);
  const roll: Model = (x) => stick?.roll(x) ?? radians(rollDeg?.(x) ?? 0);

  const x = inputs.map(({ value }) => value);
  const us = inputs.map(({ u }) => u);
  const steps = us.map((u) => u / 100);
  const felt = (model: Model): Felt => ({
    value: model(x),
    effects: Float64Array.from(gradient(model, x, steps), (slope, i) => slope * (us[i] ?? 0)),
  });
  const fromClub = club === null ? null : 'club-at-address';
  return {
    inputs,
    scaleFrom: stick ? 'stick' : fromClub,
    focalPx: felt(focal),
    distanceMm: felt(distance),
    yawRad: felt(yaw),
    uYawRad: radians(camera.uYawDeg),
    rollRad: felt(roll),
    base: {
      ball: felt(() => 0),
      'grip-end': felt((at) => length(at) * Math.cos(radians(lie(at)))),
      'club-nearer': felt((at) => -length(at)),
    },
  };
}
