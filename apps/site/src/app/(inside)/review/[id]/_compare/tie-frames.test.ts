import { describe, expect, it } from 'vitest';
import type { Mark } from '../_marking/marking.ts';
import { frameBeside, tiesBetween, timeBeside } from './tie-frames.ts';

const mark = (position: Mark['position'], frame: number): Mark => ({
  ...{ position, frame, point: 'hip-middle', x: 0, y: 0 },
  source: 'coach',
});
const at = (fps: number, frames: number) => Array.from({ length: frames }, (_, frame) => frame / fps);
const here = {
  marks: [mark('address', 10), mark('top', 100), mark('impact', 130)],
  timesS: at(120, 240),
  heardAt: null,
};
/** Filmed at 60 frames a second, with a slower way back. */
const there = {
  marks: [mark('impact', 95), mark('top', 80), mark('address', 5), mark('finish', 118)],
  timesS: at(60, 120),
  heardAt: null,
};

describe('tying two swings', () => {
  const ties = tiesBetween(here, there);
  const beside = (frame: number, byHand = 0) => frameBeside(frame, here.timesS, there.timesS, ties, byHand);

  it('finds the moments that both have, in the order of the swing', () => {
    expect(ties.map(({ moment }) => moment)).toEqual(['address', 'top', 'impact']);
  });

  it('meets every tied moment to the frame', () => {
    expect([10, 100, 130].map((frame) => beside(frame))).toEqual([5, 80, 95]);
  });

  it('runs evenly between two ties and at the same pace outside them', () => {
    expect(timeBeside(55 / 120, ties)).toBeCloseTo((5 / 60 + 80 / 60) / 2, 9);
    expect(timeBeside(160 / 120, ties)).toBeCloseTo(95 / 60 + 30 / 120, 9);
    expect(timeBeside(0, ties)).toBeCloseTo(5 / 60 - 10 / 120, 9);
  });

  it('never steps back and stays inside the other clip', () => {
    const frames = here.timesS.map((_, frame) => beside(frame));
    expect(frames).toEqual([...frames].sort((a, b) => a - b));
    expect([Math.min(...frames), Math.max(...frames)]).toEqual([0, 119]);
  });

  it('is moved by hand by frames of the other clip', () => {
    expect([beside(100, 3), beside(130, -200), beside(239, 50)]).toEqual([83, 0, 119]);
  });
});

describe('where moments are missing', () => {
  it('ties impact alone, as marked or as heard', () => {
    const unmarked = { ...there, marks: [], heardAt: 95 };
    expect(tiesBetween(here, unmarked)).toEqual([{ moment: 'impact', hereS: 130 / 120, thereS: 95 / 60 }]);
    expect(tiesBetween(here, { ...unmarked, heardAt: null })).toEqual([]);
  });

  it('runs both from their start without a tie', () => {
    expect(frameBeside(60, here.timesS, there.timesS, [], 0)).toBe(30);
    expect(frameBeside(60, here.timesS, [], [], 0)).toBe(0);
  });

  it('leaves out a moment that runs back', () => {
    const odd = { ...there, marks: [mark('address', 90), mark('top', 80), mark('impact', 95)] };
    expect(tiesBetween(here, odd).map(({ moment }) => moment)).toEqual(['address', 'impact']);
  });
});
