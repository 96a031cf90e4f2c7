import type { FirstPassFault, Place } from './place.ts';

const at = (position: Place['position'], ...points: Place['point'][]): Place[] =>
  points.map((point) => ({ position, point }));

const address = at('address', 'ball', 'lead-ankle', 'trail-ankle', 'hip-middle', 'head-centre', 'grip-end');

/** The twelve marks of a fat shot, one click each, in the order they are asked. Common practice, no source. */
export const fatFirstPass: readonly Place[] = [
  ...address,
  ...at('top', 'hip-middle', 'head-centre'),
  ...at('lead-arm-parallel-down', 'hip-middle', 'head-centre'),
  ...at('shaft-parallel-down', 'grip-end'),
  ...at('finish', 'hip-middle'),
];

/** The ten marks of a thin shot. Common practice, no source. */
export const thinFirstPass: readonly Place[] = [
  ...address,
  ...at('impact', 'head-centre', 'grip-end', 'clubhead'),
  ...at('finish', 'hip-middle'),
];

/** The four marks of a topped shot, and the two still ones that give them a scale. Common practice, no source. */
export const toppedFirstPass: readonly Place[] = [
  ...at('address', 'ball', 'grip-end', 'neck-base', 'head-centre'),
  ...at('impact', 'neck-base', 'head-centre'),
];

export const firstPasses: Readonly<Record<FirstPassFault, readonly Place[]>> = {
  fat: fatFirstPass,
  thin: thinFirstPass,
  topped: toppedFirstPass,
};
