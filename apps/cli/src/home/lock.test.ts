import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { parseHolder, releaseLock, takeLock } from './lock.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballfirst-lock-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it('keeps a second copy away, names the first, and lets go', () => {
  const lock = takeLock(folder, 'http://127.0.0.1:4600');
  expect(() => takeLock(folder, 'http://127.0.0.1:4601')).toThrow(/process \d+, http:\/\/127.0.0.1:4600/);
  releaseLock(lock);
  expect(existsSync(lock.file)).toBe(false);
});

// Only Linux tells when a process began.
const younger: [string, string][] =
  process.platform === 'linux'
    ? [['a number that was given to a younger process', `${process.pid} 1 http://127.0.0.1:4600\n`]]
    : [];

it.each([
  ...younger,
  ['a process that is gone', '4194304 12 http://127.0.0.1:4600\n'],
  ['a file that was cut off', ''],
])('takes over the lock of %s', (_, content) => {
  writeFileSync(join(folder, 'start.lock'), content);
  const lock = takeLock(folder, 'http://127.0.0.1:4600');
  expect(lock.token).toMatch(new RegExp(`^${process.pid} `));
});

it('leaves the lock of somebody who took over', () => {
  const lock = takeLock(folder, 'http://127.0.0.1:4600');
  writeFileSync(lock.file, 'another');
  releaseLock(lock);
  expect(existsSync(lock.file)).toBe(true);
});

it('reads what it wrote', () => {
  expect(parseHolder('12 345 http://x\n')).toEqual({ pid: 12, birth: '345', url: 'http://x' });
  expect(parseHolder('twelve')).toBeUndefined();
});
