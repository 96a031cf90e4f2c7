import { painHoldSentence } from '@ballfirst/library/cautions';
import { drillById } from '@ballfirst/library/drills';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PracticeEntry } from './entry.ts';
import { nextRung } from './next-rung.ts';

const ladder = drillById('line-brush').ladder;
const entry = (
  rung: PracticeEntry['rung'],
  clean: number,
  more: Partial<PracticeEntry> = {},
): PracticeEntry => ({
  rung,
  balls: 10,
  clean,
  filmed: false,
  pain: 'none',
  localDate: '2026-05-04',
  ...more,
});
const later = { localDate: '2026-05-06' };

describe('nextRung', () => {
  it('begins at the bottom, or where it is told to', () => {
    expect(nextRung([], ladder)).toMatchObject({ rung: 'rehearsal', verdict: 'stay', done: false });
    expect(nextRung([], ladder, 'brush').rung).toBe('brush');
    expect(() => nextRung([], [])).toThrow(RangeError);
  });
  it('lets the slow rungs pass on the first day at 6 of 10', () => {
    const entries = [entry('rehearsal', 6), entry('brush', 7), entry('hip-high', 6)];
    expect(nextRung(entries, ladder)).toMatchObject({ rung: 'three-quarter', verdict: 'passed' });
  });
  it('adds up short entries of one day', () => {
    const short = [entry('rehearsal', 3, { balls: 5 }), entry('rehearsal', 3, { balls: 5 })];
    expect(nextRung(short.slice(0, 1), ladder)).toMatchObject({ verdict: 'stay', balls: 5, clean: 3 });
    expect(nextRung(short, ladder)).toMatchObject({ rung: 'brush', verdict: 'passed' });
  });
  it('asks for a second day from three-quarter on', () => {
    const first = entry('three-quarter', 10);
    const once = nextRung([first], ladder, 'three-quarter');
    expect(once).toMatchObject({ rung: 'three-quarter', verdict: 'stay' });
    expect(once.words).toMatch(/another day/);
    expect(nextRung([first, entry('three-quarter', 9)], ladder, 'three-quarter').verdict).toBe('stay');
    const twice = nextRung([first, entry('three-quarter', 8, later)], ladder, 'three-quarter');
    expect(twice).toMatchObject({ rung: 'full', verdict: 'passed' });
  });
  it('ends an undecided try at 30 balls and begins afresh', () => {
    const undecided = [entry('full', 7), entry('full', 6, later), entry('full', 7, later)];
    expect(nextRung(undecided, ladder, 'full')).toMatchObject({ rung: 'full', verdict: 'stay', balls: 0 });
  });
  it('steps back after two failed tries', () => {
    const one = [entry('full', 2)];
    expect(nextRung(one, ladder, 'full')).toMatchObject({ rung: 'full', verdict: 'stay' });
    const two = [...one, entry('full', 3, later)];
    expect(nextRung(two, ladder, 'full')).toMatchObject({ rung: 'three-quarter', verdict: 'back' });
  });
  it('overdoes the move where there is no step back', () => {
    const step = nextRung([entry('rehearsal', 1), entry('rehearsal', 0)], ladder);
    expect(step).toMatchObject({ rung: 'rehearsal', verdict: 'stay', firmer: true });
  });
  it('holds at new or worse pain, whatever the score', () => {
    for (const pain of ['new', 'worse'] as const) {
      const step = nextRung([entry('rehearsal', 10, { pain })], ladder);
      expect(step).toMatchObject({ rung: 'rehearsal', verdict: 'hold', words: painHoldSentence });
    }
  });
  it('keeps entries of another rung out of the gate', () => {
    expect(nextRung([entry('full', 10)], ladder)).toMatchObject({
      rung: 'rehearsal',
      verdict: 'stay',
      balls: 0,
    });
  });
  it('counts a filmed rung only on film', () => {
    const filmed = drillById('past-the-stick').ladder;
    expect(nextRung([entry('hip-high', 9)], filmed, 'hip-high').words).toMatch(/film/);
    expect(nextRung([entry('hip-high', 9, { filmed: true })], filmed, 'hip-high').verdict).toBe('passed');
  });
  it('passes a set-up only when all five are ticked, in one entry', () => {
    const setUps = drillById('set-up-photo').ladder;
    const five = (clean: number) => entry('rehearsal', clean, { balls: 5 });
    expect(nextRung([five(4), five(4)], setUps).rung).toBe('rehearsal');
    expect(nextRung([five(4), five(5)], setUps)).toMatchObject({ rung: 'brush', verdict: 'passed' });
  });
  it('is done after the last rung', () => {
    const last = [entry('transfer', 9, { balls: 9 }), entry('transfer', 9, { balls: 9, ...later })];
    expect(nextRung(last, ladder, 'transfer')).toMatchObject({
      rung: 'transfer',
      verdict: 'passed',
      done: true,
    });
    expect(nextRung([...last, entry('transfer', 2)], ladder, 'transfer')).toMatchObject({ done: true });
  });
  it('refuses a tally over its total', () => {
    expect(() => nextRung([entry('rehearsal', 11)], ladder)).toThrow(RangeError);
    expect(() => nextRung([entry('rehearsal', 0, { balls: 0 })], ladder)).toThrow(RangeError);
  });
  it('never skips a rung, whatever is logged', () => {
    const entries = fc.array(
      fc.record({
        rung: fc.constantFrom(...ladder.map((rung) => rung.id)),
        balls: fc.constant(10),
        clean: fc.integer({ min: 0, max: 10 }),
        filmed: fc.boolean(),
        pain: fc.constantFrom('none' as const, 'none' as const, 'new' as const),
        localDate: fc.constantFrom('2026-05-04', '2026-05-06', '2026-05-08'),
      }),
      { maxLength: 12 },
    );
    const at = (list: readonly PracticeEntry[]) =>
      ladder.findIndex((rung) => rung.id === nextRung(list, ladder).rung);
    fc.assert(
      fc.property(entries, (list) => {
        const moved = at(list) - at(list.slice(0, -1));
        expect(Math.abs(moved)).toBeLessThanOrEqual(1);
      }),
      { numRuns: 300, seed: 4 },
    );
  });
});
