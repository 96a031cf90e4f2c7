import { TalkTrack } from '@ballfirst/contracts/http/talk-through';
import { describe, expect, it } from 'vitest';
import { type Shown, stepAt, type Track, withStep } from './record-track.ts';

const shown = (frame: number, given: Partial<Shown> = {}): Shown => ({
  ...{ frame, times: 1, x: 360, y: 640, point: null },
  ...given,
});
const noted = (...steps: readonly (readonly [number, Shown])[]): Track =>
  steps.reduce<Track>((track, [atMs, what]) => withStep(track, atMs, what), []);

describe('noting a track', () => {
  it('begins at the start of the sound, whenever the stage was first seen', () => {
    expect(noted([130, shown(7)])).toEqual([{ atMs: 0, ...shown(7) }]);
  });

  it('notes what changes and nothing else', () => {
    const track = noted([0, shown(7)], [500, shown(7)], [900, shown(8)], [1500, shown(8, { times: 2 })]);
    expect(track.map(({ atMs, frame, times }) => [atMs, frame, times])).toEqual([
      [0, 7, 1],
      [900, 8, 1],
      [1500, 8, 2],
    ]);
  });

  it('lets the last of quick steps count', () => {
    const track = noted(
      [0, shown(0)],
      [1000, shown(1)],
      [1020, shown(2)],
      [1040, shown(3)],
      [1200, shown(4)],
    );
    expect(track.map(({ atMs, frame }) => [atMs, frame])).toEqual([
      [0, 0],
      [1000, 3],
      [1200, 4],
    ]);
  });

  it('stays within what the service takes, however long and fast somebody points', () => {
    let track: Track = [];
    for (let atMs = 0; atMs <= 180_000; atMs += 16)
      track = withStep(track, atMs, shown(3, { point: { x: atMs % 700, y: 3.1234 } }));
    expect(track.length).toBeLessThanOrEqual(2400);
    expect(TalkTrack.safeParse(track).success).toBe(true);
    expect(track.at(-1)?.point?.y).toBe(3.1);
  });
});

it('gives what was shown at any instant', () => {
  const track = noted([0, shown(7)], [900, shown(8)], [1500, shown(9)]);
  expect([0, 899, 900, 1499, 99_999].map((atMs) => stepAt(track, atMs)?.frame)).toEqual([7, 7, 8, 8, 9]);
  expect(stepAt([], 0)).toBeNull();
});
