import { type Camera, type Pixel, project, type Scene, seenAtS, type View } from './camera.ts';
import type { GolferCause } from './golfer-causes.ts';
import { frameOfMoments, type Moment, moments, momentTimes } from './moments.ts';
import { type GolferPoint, spotsOf } from './points.ts';
import { between, plus, type Spot, spot } from './space.ts';
import type { Swing } from './swing.ts';
import { type TrueArc, trueArc } from './true-arc.ts';
import { trueLengths } from './true-lengths.ts';
import { type Measures, trueMeasures } from './true-measures.ts';

/** What is true of a rendered clip. Pixels of the upright picture; `trueMm` in mm (degrees and percent where named). */
export type Truth = {
  readonly file: string;
  readonly hand: 'right' | 'left';
  readonly view: View;
  readonly club: '8-iron';
  readonly cause: GolferCause;
  readonly causes: readonly GolferCause[];
  readonly fps: number;
  readonly frames: number;
  readonly width: number;
  readonly height: number;
  readonly positions: Readonly<Record<Moment, number>>;
  /** The instant of each moment itself, seconds; the frame of `positions` lies within half a frame of it. */
  readonly momentTimesS: Readonly<Record<Moment, number>>;
  readonly points: Readonly<Record<Moment, Readonly<Record<GolferPoint, Pixel>>>>;
  /** The stick on the ground along the target line, both ends, and its true length. */
  readonly stick: { readonly ends: readonly [Pixel, Pixel]; readonly lengthMm: number };
  readonly trueMm: Readonly<Record<string, number>>;
  /** Measurements by name at the moments themselves, and on the frames that show them. */
  readonly measures: Measures;
  readonly measuresOnFrames: Measures;
  readonly arc: TrueArc;
};

export const sceneOf = (swing: Swing): Scene => ({ hand: swing.hand, ball: swing.stance.ball });

const round = (value: number) => Math.round(value * 100) / 100;
const rounded = ([x, y]: Pixel): Pixel => [round(x), round(y)];

/** Pixel places of all points on one frame, each at the time its row is read. */
export function pixelsOf(swing: Swing, camera: Camera, frameS: number): Record<GolferPoint, Pixel> {
  const scene = sceneOf(swing);
  const around = spotsAround(swing, camera, frameS);
  const pixel = (name: GolferPoint): Pixel => {
    const place = around(name);
    return rounded(project(camera, scene, place(seenAtS(camera, scene, place, frameS))));
  };
  const names = Object.keys(spotsOf(swing.poseAt(frameS))) as GolferPoint[];
  return Object.fromEntries(names.map((name) => [name, pixel(name)])) as Record<GolferPoint, Pixel>;
}

/**
 * Places of points while one frame is read. The club is followed exactly; the body, far slower, along the parabola
 * through three of its poses (less than .05 mm off at the hands).
 */
function spotsAround(swing: Swing, camera: Camera, frameS: number) {
  const now = spotsOf(swing.poseAt(frameS));
  const half = camera.readoutS / 2;
  if (half === 0) return (name: GolferPoint) => () => now[name];
  const before = spotsOf(swing.poseAt(frameS - half));
  const after = spotsOf(swing.poseAt(frameS + half));
  const onClub = { 'grip-end': 0, 'shaft-mid': 0.5, clubhead: 1 } as const;
  return (name: GolferPoint) => {
    if (name === 'grip-end' || name === 'shaft-mid' || name === 'clubhead') {
      return (timeS: number): Spot => {
        const { gripEnd, head } = swing.clubAt(timeS);
        return between(gripEnd, head, onClub[name]);
      };
    }
    const [a, b, c] = [before[name], now[name], after[name]];
    return (timeS: number): Spot => {
      const u = (timeS - frameS) / half;
      return plus(plus(plus(spot(0, 0, 0), a, (u * (u - 1)) / 2), b, 1 - u * u), c, (u * (u + 1)) / 2);
    };
  };
}

/** The truth of a clip: frames of the moments, pixels of the points on them, and the true lengths. */
export function truthOf(swing: Swing, camera: Camera, fps: number, file: string): Truth {
  const momentTimesS = momentTimes(swing);
  const positions = frameOfMoments(momentTimesS, fps);
  const byMoment = <T>(of: (moment: Moment) => T) =>
    Object.fromEntries(moments.map((moment) => [moment, of(moment)])) as Record<Moment, T>;
  const frameTimes = byMoment((moment) => positions[moment] / fps);
  const [from, to] = swing.stance.stick;
  const scene = sceneOf(swing);
  const arc = roundedArc(trueArc(swing));
  return {
    file,
    hand: swing.hand,
    view: camera.view,
    club: '8-iron',
    cause: swing.cause,
    causes: swing.causes,
    fps,
    frames: Math.round(swing.durationS * fps),
    width: camera.widthPx,
    height: camera.heightPx,
    positions,
    momentTimesS: byMoment((moment) => Math.round(momentTimesS[moment] * 1e5) / 1e5),
    points: byMoment((moment) => pixelsOf(swing, camera, frameTimes[moment])),
    stick: {
      ends: [rounded(project(camera, scene, from)), rounded(project(camera, scene, to))],
      lengthMm: round(swing.shape.stickLengthMm),
    },
    trueMm: trueLengths(swing, frameTimes, arc.lowPointAheadMm),
    measures: inHundredths(trueMeasures(swing, camera.view, momentTimesS)),
    measuresOnFrames: inHundredths(trueMeasures(swing, camera.view, frameTimes)),
    arc,
  };
}

/** Figures to a hundredth, so that a kept truth is the same on every machine. */
const inHundredths = (values: Measures): Measures =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, round(value)]));

function roundedArc(arc: TrueArc): TrueArc {
  const { groundBehindBallMm, ...numbers } = arc;
  const kept = inHundredths(numbers) as Omit<TrueArc, 'groundBehindBallMm'>;
  return { ...kept, groundBehindBallMm: groundBehindBallMm === null ? null : round(groundBehindBallMm) };
}
