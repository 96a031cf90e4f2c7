import { expect, it } from 'vitest';
import { clipIdOf, leftMs } from './upload-state.ts';

it('reads the clip from the address of its upload', () => {
  expect(clipIdOf('/uploads/0198-a')).toBe('0198-a');
  expect(clipIdOf('https://door.example/uploads/0198-a/')).toBe('0198-a');
  expect(clipIdOf(null)).toBeNull();
});

it('tells the time left only once there is a rate', () => {
  expect(leftMs(10, 0, 100, 500)).toBeNull();
  expect(leftMs(50, 25, 100, 5000)).toBe(10_000);
});
