import { causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import { firstPassFor } from '@ballfirst/swing/marks/first-pass';
import { positions, type SwingLength, type View } from '@ballfirst/swing/marks/marks';
import type { Place } from '@ballfirst/swing/marks/place';
import { placesForKey } from '@ballfirst/swing/marks/places-for-key';

/** As long as the longest first pass. */
const most = 12;

export type Pass = {
  readonly places: readonly Place[];
  /** The view this miss is better read in, where this clip is of the other one. */
  readonly betterFrom: View | null;
};

const bySwing = (a: Place, b: Place): number => positions.indexOf(a.position) - positions.indexOf(b.position);

/** What this view gives for a miss that is better read in the other: the marks of its causes' signs, the heaviest first. */
const placesInView = (fault: FaultId, view: View): readonly Place[] => {
  const signs = [...causes]
    .sort((a, b) => (b.brings[fault] ?? 0) - (a.brings[fault] ?? 0))
    .filter(({ brings }) => brings[fault] !== undefined)
    .flatMap((cause) => cause.signs)
    .filter((sign) => sign.kind === 'measured' && (sign.view === 'either' || sign.view === view));
  let places: readonly Place[] = [];
  for (const { key } of signs) {
    const more = placesForKey(key, places, view) ?? [];
    if (places.length + more.length <= most) places = [...places, ...more];
  }
  return places.toSorted(bySwing);
};

/** The marks that are asked for, one click each: by the miss, for the view and the length of this swing. */
export const passOf = (fault: FaultId, view: View, swingLength: SwingLength): Pass => {
  const pass = firstPassFor(fault, swingLength);
  return pass.view === view
    ? { places: pass.places, betterFrom: null }
    : { places: placesInView(fault, view), betterFrom: pass.view };
};
