import type { ScatterId } from './types.ts';

/** A set of balls that never repeats: seen in ten balls, never in one. */
export type Scatter = {
  readonly id: ScatterId;
  readonly name: string;
  readonly studentName: string;
  readonly happened: string;
};

export const scatterList: readonly Scatter[] = [
  {
    id: 'low-point-scatter',
    name: 'Fat and thin in turn',
    studentName: 'Ground first, then thin',
    happened: 'The club met the ground now before the ball, now past it.',
  },
  {
    id: 'face-scatter',
    name: 'Starts to both sides',
    studentName: 'To the left and to the right',
    happened: 'The ball started or curved now to one side, now to the other.',
  },
];

const byId = new Map(scatterList.map((one) => [one.id, one]));

/** @throws RangeError on an unknown scatter */
export const scatterById = (id: ScatterId): Scatter => {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`No scatter is called "${id}".`);
  return found;
};
