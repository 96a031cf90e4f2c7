import { MarkOutsideError } from '../marks/check-mark.ts';
import type { Mark, Picture, Setting } from '../marks/marks.ts';
import type { RefusedWhy } from '../measurement.ts';
import { estimateArc } from './arc-estimate.ts';
import { arcPriors, usualPlane } from './arc-question.ts';
import type { ArcRefusedWhy } from './arc-refusal.ts';
import { type ClubheadPixel, clubheadTrack } from './clubhead-track.ts';

/** What one swing tells of its arc, small enough to keep: plain numbers, mm. */
export type ArcReading = {
  /** + ahead of the ball, towards the target. */
  readonly lowPointMm: number;
  /** Doubt (1 SD) from this swing's own marks, its radius in doubt too. */
  readonly uOwnMm: number;
  /** Doubt (1 SD) from the level of the stick, which all swings of one set-up share. */
  readonly uTiltMm: number;
  readonly radiusMm: number;
  readonly uRadiusMm: number;
  /** How far the low point moves for each mm by which the radius is put right. */
  readonly perRadius: number;
};
export type ArcNotRead = { readonly why: RefusedWhy; readonly words: string };

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
 * What the clubhead on frames near the ball tells of its arc; or why it tells nothing.
 *
 * @param trail - the clubhead in pixels, one a frame, in any order; none is refused
 * @param marks - the other marks of the swing: ball, and the stick on the target line
 * @param picture - with the true times of its frames, seconds
 * @throws MarkOutsideError (a RangeError) when the clubhead is marked outside the picture
 * @source the arc estimator of `arc-estimate.ts`; its refusals are obeyed
 */
export function readArc(
  trail: readonly ClubheadPixel[],
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
): ArcReading | ArcNotRead {
  if (setting.view !== 'face-on') {
    return { why: 'wrong-view', words: `A ${setting.view} picture does not show it.` };
  }
  if (trail.length === 0) {
    return { why: 'marks-missing', words: 'The clubhead is not marked over frames near the ball.' };
  }
  try {
    const track = clubheadTrack(trail, marks, picture, setting);
    const priors = arcPriors(setting.club);
    const blurMm = priors.speedMmS.value * shutterS;
    // How high the lens stood nobody told: attack and height are left out then.
    const arc = estimateArc({ ...track, blurMm, camera: null, planeDeg: usualPlane(setting.club), priors });
    if ('why' in arc) return { why: whyOf[arc.why], words: arc.words };
    const { value, u, uTilt } = arc.lowPointAheadMm;
    return {
      lowPointMm: value,
      uOwnMm: Math.sqrt(Math.max(0, u ** 2 - uTilt ** 2)),
      uTiltMm: uTilt,
      radiusMm: arc.radiusMm.value,
      uRadiusMm: arc.radiusMm.u,
      perRadius: arc.lowPointPerRadius,
    };
  } catch (error) {
    if (error instanceof MarkOutsideError || !(error instanceof RangeError)) throw error;
    return { why: 'marks-missing', words: error.message };
  }
}
