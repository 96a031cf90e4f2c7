import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** A file that stands only while an empty database is being filled: after a cut it says that filling begins anew. */
const marker = (folder: string) => join(folder, 'demo.unfinished');

export function isDemoUnfinished(folder: string): boolean {
  return existsSync(marker(folder));
}

export function noteUnfinishedDemo(folder: string): void {
  writeFileSync(marker(folder), '', { flush: true });
}

export function forgetUnfinishedDemo(folder: string): void {
  rmSync(marker(folder), { force: true });
}
