import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { firstCause } from '@ballfirst/diagnosis/first-cause';
import { rank } from '@ballfirst/diagnosis/rank';
import { readAll } from '@ballfirst/diagnosis/read-all';
import { causes } from '@ballfirst/library/causes';
import type { FaultId } from '@ballfirst/library/types';
import { firstPassFor } from '@ballfirst/swing/marks/first-pass';
import type { Mark, Position, Setting } from '@ballfirst/swing/marks/marks';
import { measure } from '@ballfirst/swing/measure';
import { describe, expect, it } from 'vitest';

// Source: the truth of the demo's clips, drawn by a golfer that knows nothing of our measurements.
const folder = join(import.meta.dirname, '..', '..', 'packages', 'demo', 'clips', 'truth');
type Truth = Pick<Setting, 'view' | 'hand' | 'club'> & {
  readonly cause: string;
  readonly fps: number;
  readonly frames: number;
  readonly width: number;
  readonly height: number;
  readonly positions: Readonly<Record<Position, number>>;
  readonly points: Readonly<Record<Position, Readonly<Record<string, readonly [number, number]>>>>;
};
const truths = readdirSync(folder).map((file) => ({
  file,
  truth: JSON.parse(readFileSync(join(folder, file), 'utf8')) as Truth,
}));

/** The miss each cause is filmed for. */
const faultOf: Readonly<Record<string, FaultId>> = {
  lift: 'topped',
  'hips-toward-ball': 'shank',
  'out-to-in': 'slice',
};
const rankedFor = (fault: FaultId, truth: Truth) => {
  const setting: Setting = { view: truth.view, hand: truth.hand, club: truth.club, swingLength: 'full' };
  const marks = firstPassFor(fault, 'full').places.map(({ position, point }): Mark => {
    const spot = truth.points[position][point];
    if (spot === undefined) throw new Error(`${position}/${point} is not in the truth`);
    return { position, point, frame: truth.positions[position], x: spot[0], y: spot[1], source: 'coach' };
  });
  const picture = {
    widthPx: truth.width,
    heightPx: truth.height,
    frameTimesS: Array.from({ length: truth.frames }, (_, frame) => frame / truth.fps),
  };
  const { measurements } = measure(marks, picture, setting);
  return rank({ fault, readings: readAll(measurements, setting), observations: [], causes });
};

describe('the first pass of each demo clip', () => {
  it.each(truths.filter(({ truth }) => truth.cause !== 'none'))(
    '$file: the planted cause comes first',
    ({ truth }) => {
      expect(rankedFor(faultOf[truth.cause] ?? 'fat', truth)[0]?.causeId).toBe(truth.cause);
    },
  );

  it.each(truths.filter(({ truth }) => truth.cause === 'none'))('$file: nothing stands out', ({ truth }) => {
    for (const fault of ['fat', 'thin', 'topped'] as const)
      expect(firstCause(rankedFor(fault, truth))).toBeNull();
  });
});
