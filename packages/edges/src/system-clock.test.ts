import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, it } from 'vitest';
import { clockFromFile } from './system-clock.ts';

it('moves time by the file, read anew each time; without one it does not', async () => {
  const folder = await mkdtemp(path.join(tmpdir(), 'ballfirst-clock-'));
  const file = path.join(folder, 'offset-ms');
  const clock = clockFromFile(file);
  const moved = () => clock.now().getTime() - Date.now();
  expect(Math.abs(moved())).toBeLessThan(1_000);
  await writeFile(file, '86400000\n');
  expect(Math.abs(moved() - 86_400_000)).toBeLessThan(1_000);
  await writeFile(file, 'tomorrow');
  expect(Math.abs(moved())).toBeLessThan(1_000);
  await rm(folder, { recursive: true });
});
