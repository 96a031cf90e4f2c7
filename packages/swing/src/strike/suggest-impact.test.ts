import { describe, expect, it } from 'vitest';
import { type ImpactSuggestion, suggestImpact } from './suggest-impact.ts';
import { swingWindow } from './swing-window.ts';

const timesS = Array.from({ length: 361 }, (_, frame) => frame / 120);
const onset = (timeMs: number, peakDb: number, risesDb = 30) => ({ timeMs, uMs: 5, peakDb, risesDb });
const window = { fromS: 1, toS: 2.2, liveliestS: 1.8 };
const said = (...given: Parameters<typeof suggestImpact>): Partial<ImpactSuggestion> | null =>
  suggestImpact(...given);

describe('suggestImpact', () => {
  it('is likely where one clear strike lies in the swing', () => {
    expect(said([onset(1800, -10)], window, timesS)).toEqual({
      ...{ frame: 216, impactMs: 1800, uMs: 5, uFrames: 1, confidence: 'likely', others: 0 },
    });
  });

  it('takes the loudest at which the picture moves, though the next bay is louder', () => {
    const heard = [onset(500, -4), onset(1750, -9), onset(1900, -30)];
    expect(said(heard, window, timesS)).toMatchObject({ frame: 210, confidence: 'possible', others: 1 });
  });

  it('is less sure of a faint strike, one without movement, one among equals', () => {
    expect(said([onset(1800, -30, 14)], window, timesS)).toMatchObject({ confidence: 'possible' });
    expect(said([onset(1800, -10)], null, timesS)).toMatchObject({ confidence: 'possible' });
    expect(said([onset(1800, -10), onset(2000, -11)], null, timesS)).toMatchObject({
      ...{ confidence: 'unsure', others: 1 },
    });
  });

  it('says nothing where nothing was heard, or only after the last frame', () => {
    expect(said([], window, timesS)).toBeNull();
    expect(said([onset(3_500, -3)], window, timesS)).toBeNull();
  });

  it('tells its doubt in frames of the clip', () => {
    const fast = Array.from({ length: 721 }, (_, frame) => frame / 240);
    expect(said([onset(1800, -10)], window, fast)).toMatchObject({ frame: 432, uFrames: 1 });
    expect(said([{ ...onset(1800, -10), uMs: 9 }], window, fast)).toMatchObject({ uFrames: 2 });
  });
});

describe('swingWindow', () => {
  const times = Array.from({ length: 40 }, (_, index) => index / 12);
  const moving = (from: number, to: number, much = 10) =>
    times.map((time, index) => (index === 0 ? 0 : time >= from && time <= to ? much : 0.5));

  it('finds the part that moves and its liveliest moment', () => {
    const motion = moving(1, 2);
    motion[20] = 30;
    const found = swingWindow(times, motion);
    expect(found?.liveliestS).toBeCloseTo(20 / 12, 9);
    expect(found?.fromS).toBeGreaterThan(0.8);
    expect(found?.toS).toBeCloseTo(2, 1);
  });

  it('bridges the pause at the top, but not the walk to the ball', () => {
    const motion = moving(1.5, 2).map((value, index) => (index === 14 ? 9 : value));
    motion[3] = 9;
    expect(swingWindow(times, motion)?.fromS).toBeCloseTo(13 / 12, 9);
  });

  it('says nothing of a still clip, one that moves throughout, or a moment of film', () => {
    expect(
      swingWindow(
        times,
        times.map(() => 0),
      ),
    ).toBeNull();
    expect(
      swingWindow(
        times,
        times.map(() => 4),
      ),
    ).toBeNull();
    expect(swingWindow([0, 1], [0, 9])).toBeNull();
  });

  it('refuses times that do not rise', () => {
    expect(() => swingWindow([0, 1, 1, 2], [0, 1, 1, 1])).toThrow(RangeError);
    expect(() => swingWindow([0], [])).toThrow(RangeError);
  });
});
