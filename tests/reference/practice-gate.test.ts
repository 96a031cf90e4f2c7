import type { Rung } from '@ballfirst/library/types';
import { askGate, freshWindow, type GateWindow } from '@ballfirst/practice/gate';
import { describe, expect, it } from 'vitest';

/**
 * Exact operating characteristic of the gate itself, by carrying every possible count with its probability.
 * Source: Wald 1947, Sequential Analysis (test with p0 .5, p1 .8, both risks .1); the shares were computed independently.
 */
const full: Rung = {
  id: 'full',
  ball: true,
  balls: 10,
  speedPercent: 85,
  clean: 'ball first',
  filmed: false,
};

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n, k - 1) * (n - k + 1)) / k);

/** Shares of tries that end in a pass, a fail, or undecided at 30, for a true share `p` in entries of `size`. */
const characteristic = (p: number, size: number): { pass: number; fail: number; undecided: number } => {
  const ended = { pass: 0, fail: 0, undecided: 0 };
  // Two days have been practised already, so that only the test decides.
  const begun: GateWindow = { ...freshWindow, days: ['2026-05-04', '2026-05-06'] };
  let open = new Map<number, { window: GateWindow; probability: number }>([
    [0, { window: begun, probability: 1 }],
  ]);
  for (let balls = size; balls <= 30; balls += size) {
    const next = new Map<number, { window: GateWindow; probability: number }>();
    for (const { window, probability } of open.values()) {
      for (let clean = 0; clean <= size; clean += 1) {
        const share = probability * choose(size, clean) * p ** clean * (1 - p) ** (size - clean);
        const entry = { balls: size, clean, filmed: false, localDate: '2026-05-06' };
        const { verdict, window: after } = askGate(full, window, entry);
        if (verdict === 'pass' || verdict === 'fail') ended[verdict] += share;
        else if (after.balls === 0) ended.undecided += share;
        else {
          const so = next.get(after.clean);
          next.set(after.clean, { window: after, probability: (so?.probability ?? 0) + share });
        }
      }
    }
    open = next;
  }
  return ended;
};

describe('operating characteristic of the gate', () => {
  it.each([
    [0.5, 0.029, 0.053],
    [0.661, 0.356, 0.25],
    [0.8, 0.892, 0.067],
  ])('in entries of ten to 30, true share %s: pass %s, undecided %s', (p, pass, undecided) => {
    const found = characteristic(p, 10);
    expect(found.pass).toBeCloseTo(pass, 3);
    expect(found.undecided).toBeCloseTo(undecided, 3);
    expect(found.pass + found.fail + found.undecided).toBeCloseTo(1, 12);
  });
  it.each([
    [0.5, 0.083, 0.02],
    [0.661, 0.46, 0.092],
    [0.8, 0.9, 0.024],
  ])('ball by ball to 30, true share %s: pass %s, undecided %s', (p, pass, undecided) => {
    const found = characteristic(p, 1);
    expect(found.pass).toBeCloseTo(pass, 3);
    expect(found.undecided).toBeCloseTo(undecided, 3);
  });
});
