import type { Picture, Setting } from '../marks/marks.ts';
import type { PlacedMarks } from '../marks/placed-marks.ts';
import { type Scale, scaleOf } from './scale.ts';
import { type Sight, sightOf } from './sight.ts';

/** Two scales that differ by more than this many of their joined doubts do not fit. Common practice: 95 %. */
const most = 2;

/**
 * How far two scales disagree, in joined standard uncertainties.
 *
 * @throws RangeError when a scale is not positive or has no doubt
 */
export function scaleDisagreement(one: Scale, other: Scale): number {
  if (!(one.mmPerPx > 0 && other.mmPerPx > 0)) throw new RangeError('A scale is positive.');
  const u = Math.hypot(one.u / one.mmPerPx, other.u / other.mmPerPx);
  if (!(u > 0)) throw new RangeError('A scale carries a doubt.');
  return Math.abs(Math.log(one.mmPerPx / other.mmPerPx)) / u;
}

/** Says so when stick and club at address give different scales: the camera is off axis, or a length is not the usual. */
export function scaleWarnings(
  sight: Sight,
  marks: PlacedMarks,
  picture: Picture,
  setting: Setting,
): readonly string[] {
  if (sight.scaleFrom !== 'stick') return [];
  const stick = scaleOf(sight, setting);
  const club = scaleOf(sightOf(marks, picture, setting, 'stick'), setting);
  if (stick === null || club === null || scaleDisagreement(stick, club) <= most) return [];
  return [
    'The stick and the club at address give different scales: the camera is off axis, or one of them is not of the usual length.',
  ];
}
