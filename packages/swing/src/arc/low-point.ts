import { MarkOutsideError } from '../marks/check-mark.ts';
import type { Mark, Picture, Setting } from '../marks/marks.ts';
import type { Measurement, Refusal, RefusedWhy } from '../measurement.ts';
import { estimateArc } from './arc-estimate.ts';
import { arcPriors, usualPlane } from './arc-question.ts';
import type { ArcRefusedWhy } from './arc-refusal.ts';
import { type ClubheadPixel, clubheadTrack } from './clubhead-track.ts';

const key = 'low-point-ahead-of-ball';
/** A shutter of a phone in daylight, seconds. Common practice, no source. */
const shutterS = 1 / 1000;

const whyOf: Readonly<Record<ArcRefusedWhy, RefusedWhy>> = {
  'no-stick': 'marks-missing',
  'too-few-marks': 'marks-missing',
  'one-side-only': 'marks-missing',
  'span-too-short': 'marks-missing',
  'too-few-frames': 'doubt-too-large',
  'doubt-too-large': 'doubt-too-large',
};

/**
 * The lowest point of the clubhead's arc, ahead of the ball, from the clubhead on frames near it; or why it is not told.
 *
 * @param trail - the clubhead in pixels, one a frame, in any order; none is refused
 * @param marks - the other marks of the swing: ball, and the stick on the target line
 * @param picture - with the true times of its frames, seconds
 * @returns mm, + towards the target; `uStatistical` leaves out what the level of the stick adds
 * @throws MarkOutsideError (a RangeError) when the clubhead is marked outside the picture
 * @source the arc estimator of `arc-estimate.ts`; its refusals are obeyed
 */
export function measureLowPoint(
  trail: readonly ClubheadPixel[],
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
): Measurement | Refusal {
  const refused = (why: RefusedWhy, words: string): Refusal => ({ key, why, words });
  if (setting.view !== 'face-on') {
    return refused('wrong-view', `A ${setting.view} picture does not show it.`);
  }
  if (trail.length === 0) {
    return refused('marks-missing', 'The clubhead is not marked over frames near the ball.');
  }
  try {
    const track = clubheadTrack(trail, marks, picture, setting);
    const priors = arcPriors(setting.club);
    const blurMm = priors.speedMmS.value * shutterS;
    // How high the lens stood nobody told: attack and height are left out then.
    const arc = estimateArc({ ...track, blurMm, camera: null, planeDeg: usualPlane(setting.club), priors });
    if ('why' in arc) return refused(whyOf[arc.why], arc.words);
    const { value, u, uTilt } = arc.lowPointAheadMm;
    const uStatistical = Math.sqrt(Math.max(0, u ** 2 - uTilt ** 2));
    return { key, unit: 'mm', value, u, uStatistical, proxy: false, positions: ['impact'] };
  } catch (error) {
    if (error instanceof MarkOutsideError || !(error instanceof RangeError)) throw error;
    return refused('marks-missing', error.message);
  }
}
