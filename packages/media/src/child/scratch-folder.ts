import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** A folder for one test file, removed after it; returns how to name a file in it. */
export function scratchFolder(): (name: string) => string {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-media-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return (name) => join(folder, name);
}
