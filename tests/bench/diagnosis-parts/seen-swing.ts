import { drawShot, type ShotWishes } from '@ballfirst/demo/golfer/draw-swing';
import type { GolferCause } from '@ballfirst/demo/golfer/golfer-causes';
import { type MarkNoise, makeMarks } from '@ballfirst/demo/golfer/make-marks';
import { readAll } from '@ballfirst/diagnosis/read-all';
import { definitions } from '@ballfirst/swing/definitions/definitions';
import type { View } from '@ballfirst/swing/marks/marks';
import { measure } from '@ballfirst/swing/measure';
import type { Reading } from '@ballfirst/swing/measurement';

/** A drawn golfer, filmed and fully marked by a coach who errs, as it is measured; and what was true. */
export type SeenSwing = {
  readonly causes: readonly GolferCause[];
  readonly view: View;
  readonly yawDeg: number;
  readonly readings: readonly Reading[];
  readonly truth: Readonly<Record<string, number>>;
};

type Place = (typeof definitions)[number]['needed'][number];
const placesIn = (view: View): readonly Place[] => {
  const found = new Map<string, Place>();
  for (const definition of definitions) {
    if (definition.view !== view) continue;
    for (const place of definition.needed) found.set(`${place.position}/${place.point}`, place);
  }
  return [...found.values()];
};
const places: Readonly<Record<View, readonly Place[]>> = {
  'face-on': placesIn('face-on'),
  'down-the-line': placesIn('down-the-line'),
};

/** How a swing is filmed and marked otherwise than by chance. */
export type Otherwise = { readonly camera?: NonNullable<ShotWishes['camera']>; readonly noise?: MarkNoise };

/** The same seed gives the same swing, camera and clicks. */
export function seenSwing(
  seed: number,
  view: View,
  causes: readonly GolferCause[],
  { camera = {}, noise = {} }: Otherwise = {},
): SeenSwing {
  const shot = drawShot(seed, { view, causes, camera });
  const { truth } = shot;
  const there = places[view].filter(({ position, point }) => point in truth.points[position]);
  const marks = makeMarks(shot, there as Parameters<typeof makeMarks>[1], seed ^ 0x5eed1, {
    coachSeed: seed % 40,
    ...noise,
  });
  const inPicture = marks.filter(({ x, y }) => x >= 0 && y >= 0 && x < truth.width && y < truth.height);
  const setting = { view, hand: 'right', club: '8-iron', swingLength: 'full' } as const;
  const picture = {
    widthPx: truth.width,
    heightPx: truth.height,
    frameTimesS: Array.from({ length: truth.frames }, (_, frame) => frame / truth.fps),
  };
  const { measurements } = measure(inPicture as Parameters<typeof measure>[0], picture, setting);
  const readings = readAll(measurements, setting);
  return { causes, view, yawDeg: shot.camera.yawDeg, readings, truth: truth.measuresOnFrames };
}
