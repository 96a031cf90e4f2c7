import { estimateArc } from '@ballfirst/swing/arc-estimate';
import { arcPriors, usualPlane } from '@ballfirst/swing/arc-question';
import { type ClubheadPixel, clubheadTrack } from '@ballfirst/swing/clubhead-track';
import type { Picture, Setting } from '@ballfirst/swing/marks';
import type { Mark } from '../_marking/marking.ts';

export type TrailReading =
  | { readonly kind: 'low-point'; readonly aheadMm: number; readonly uMm: number }
  | { readonly kind: 'refused'; readonly words: string };

/** A shutter of a phone in daylight: so many seconds. Common practice, no source. */
const shutterS = 1 / 1000;

/** What the clubhead near the ball says of the lowest point of its arc, or why it says nothing. */
export const readTrail = (
  trail: readonly ClubheadPixel[],
  marks: readonly Mark[],
  picture: Picture,
  setting: Setting,
): TrailReading => {
  try {
    const track = clubheadTrack(trail, marks, picture, setting);
    const priors = arcPriors(setting.club);
    const blurMm = priors.speedMmS.value * shutterS;
    // How high the lens stood nobody told: attack and height are left out then.
    const arc = estimateArc({ ...track, blurMm, camera: null, planeDeg: usualPlane(setting.club), priors });
    if ('why' in arc) return { kind: 'refused', words: arc.words };
    return { kind: 'low-point', aheadMm: arc.lowPointAheadMm.value, uMm: arc.lowPointAheadMm.u };
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'refused', words: error.message };
    throw error;
  }
};
