import { lacksPosition } from './lacks-moment.ts';
import type { SwingLength, View } from './marks.ts';
import type { FirstPassFault, Place } from './place.ts';

/** The view a fault is best seen in, and the marks to place there, one click each, in the order they are asked. */
export type FirstPass = { readonly view: View; readonly places: readonly Place[] };

const at = (position: Place['position'], ...points: Place['point'][]): Place[] =>
  points.map((point) => ({ position, point }));

const faceOnAddress = at(
  'address',
  'ball',
  'lead-ankle',
  'trail-ankle',
  'hip-middle',
  'head-centre',
  'grip-end',
);

/** The twelve marks of a fat shot. Common practice, no source; so are all that follow. */
export const fatFirstPass: readonly Place[] = [
  ...faceOnAddress,
  ...at('top', 'hip-middle', 'head-centre'),
  ...at('lead-arm-parallel-down', 'hip-middle', 'head-centre'),
  ...at('shaft-parallel-down', 'grip-end'),
  ...at('finish', 'hip-middle'),
];

/** The ten marks of a thin shot. They serve a skied one too: what brings that about shows in ball, head and handle. */
export const thinFirstPass: readonly Place[] = [
  ...faceOnAddress,
  ...at('impact', 'head-centre', 'grip-end', 'clubhead'),
  ...at('finish', 'hip-middle'),
];

/** The four marks of a topped shot, and the two still ones that give them a scale. */
export const toppedFirstPass: readonly Place[] = [
  ...at('address', 'ball', 'grip-end', 'neck-base', 'head-centre'),
  ...at('impact', 'neck-base', 'head-centre'),
];

/** Six marks from behind for a ball that leaves the wrong part of the face. */
export const facePartFirstPass: readonly Place[] = [
  ...at('address', 'seat-line', 'hands', 'toe-line', 'ball'),
  ...at('impact', 'seat-line', 'hands'),
];

/** Five marks from behind for a ball that starts or curves aside. */
export const flightFirstPass: readonly Place[] = [
  ...at('address', 'grip-end', 'clubhead', 'seat-line'),
  ...at('lead-arm-parallel-down', 'grip-end', 'clubhead'),
];

// A short swing lacks the moments of the long one; these stand for them.
const fatWhenShort = [
  ...faceOnAddress,
  ...at('shaft-parallel-down', 'grip-end'),
  ...at('impact', 'hip-middle', 'head-centre'),
];
const flightWhenShort = [
  ...at('address', 'grip-end', 'clubhead', 'seat-line'),
  ...at('shaft-parallel-down', 'grip-end', 'clubhead'),
];

const pass = (view: View, places: readonly Place[], whenShort: readonly Place[] = places) => ({
  view,
  places,
  whenShort: whenShort.filter(({ position }) => position !== 'finish'),
});
const fat = pass('face-on', fatFirstPass, fatWhenShort);
const thin = pass('face-on', thinFirstPass);
const facePart = pass('down-the-line', facePartFirstPass);
const flight = pass('down-the-line', flightFirstPass, flightWhenShort);

const passes: Readonly<Record<FirstPassFault, ReturnType<typeof pass>>> = {
  fat,
  thin,
  topped: pass('face-on', toppedFirstPass),
  slice: flight,
  hook: flight,
  push: flight,
  pull: flight,
  shank: facePart,
  heel: facePart,
  toe: facePart,
  sky: thin,
  'low-point-scatter': fat,
  'face-scatter': flight,
};

/** The marks of each fault in a full swing, whatever the view. */
export const firstPasses = Object.fromEntries(
  Object.entries(passes).map(([fault, { places }]) => [fault, places]),
) as Readonly<Record<FirstPassFault, readonly Place[]>>;

/**
 * Where to look first for a fault: the view and the marks, none at a moment that a swing of this length lacks.
 *
 * @example firstPassFor('shank', 'full').view // 'down-the-line'
 */
export function firstPassFor(fault: FirstPassFault, swingLength: SwingLength): FirstPass {
  const { view, places, whenShort } = passes[fault];
  return { view, places: lacksPosition('top', swingLength) ? whenShort : places };
}
