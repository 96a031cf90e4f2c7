import { expect, it } from 'vitest';
import { passOf } from './pass-of.ts';

it('asks for the marks of the miss in the view it is read in', () => {
  expect(passOf('fat', 'face-on', 'full')).toMatchObject({ betterFrom: null });
  expect(passOf('fat', 'face-on', 'full').places).toHaveLength(12);
  expect(passOf('shank', 'down-the-line', 'full').places).toHaveLength(6);
  expect(passOf('pull', 'down-the-line', 'full').betterFrom).toBeNull();
});

it('names the better view, and asks for what this one gives', () => {
  const pass = passOf('slice', 'face-on', 'full');
  expect(pass.betterFrom).toBe('down-the-line');
  expect(pass.places.length).toBeGreaterThan(0);
  expect(pass.places.length).toBeLessThanOrEqual(12);
  expect(passOf('fat', 'down-the-line', 'full').betterFrom).toBe('face-on');
});
