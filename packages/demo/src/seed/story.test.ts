import { faults } from '@ballfirst/library/types';
import { describe, expect, it } from 'vitest';
import { academies } from './academies.ts';
import { demoChapters } from './chapters.ts';
import { storyOf } from './story.ts';
import { joinedAtOf } from './story-times.ts';
import { studentsOf } from './students.ts';

const [quillmere] = academies;
if (quillmere === undefined) throw new Error('There is no academy.');
/** A Wednesday forenoon, a Sunday night, the week of a clock change, New Year's Day. */
const nows = ['2026-11-25T10:20:00Z', '2026-11-29T23:50:00Z', '2027-03-29T07:00:00Z', '2027-01-01T12:00:00Z'];

describe.each(nows)('the stories told at %s', (instant) => {
  const now = new Date(instant);
  const lines = academies.flatMap((academy) =>
    (studentsOf[academy.slug] ?? []).map((line) => ({ academy, line, story: storyOf(academy, line, now) })),
  );

  it('happen in their order: after joining, before now', () => {
    for (const { academy, line, story } of lines) {
      let last = joinedAtOf(academy, line, now).getTime();
      for (const { sentAt, answered, filmAgain } of story) {
        expect(sentAt.getTime(), line.key).toBeGreaterThanOrEqual(last);
        last = sentAt.getTime();
        for (const at of [answered?.at, answered?.readAt, filmAgain?.at, ...(answered?.practice ?? [])]) {
          if (!at) continue;
          expect(at.getTime(), line.key).toBeGreaterThan(sentAt.getTime());
          expect(at.getTime(), line.key).toBeLessThanOrEqual(now.getTime());
        }
      }
    }
  });

  it('are the same for the same instant', () => {
    expect(academies.map((it) => demoChapters(it, now))).toEqual(
      academies.map((it) => demoChapters(it, now)),
    );
  });
});

it('are different people: no two of one name or address', () => {
  const lines = Object.values(studentsOf).flat();
  expect(new Set(lines.map(({ name }) => name)).size).toBe(lines.length);
  expect(new Set(lines.map(({ key }) => key)).size).toBe(lines.length);
  expect(studentsOf.quillmere).toHaveLength(40);
});

it('wait with every miss that a tally names, and with curves', () => {
  const waiting = (studentsOf.quillmere ?? []).flatMap(({ waiting }) => (waiting ? [waiting] : []));
  const misses = new Set(waiting.flatMap((it) => Object.keys(it.misses)));
  const named = faults.filter((it) => !['slice', 'hook', 'push', 'pull'].includes(it));
  expect([...misses].sort()).toEqual([...named].sort());
  expect(waiting.some(({ curve }) => curve === 'right')).toBe(true);
});
