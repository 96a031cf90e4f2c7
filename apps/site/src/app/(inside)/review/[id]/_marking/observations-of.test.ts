import { expect, it } from 'vitest';
import { observationsOf } from './observations-of.ts';

it('asks at most six things that this view can show', () => {
  const asked = observationsOf('fat', 'face-on');
  expect(asked.length).toBeGreaterThan(2);
  expect(asked.length).toBeLessThanOrEqual(6);
  expect(asked.every(({ view }) => view !== 'down-the-line')).toBe(true);
  expect(new Set(asked.map(({ key }) => key)).size).toBe(asked.length);
});
