import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { DemoAcademy } from '@ballfirst/demo/seed/seed-demo';

/** `BALLFIRST_HOME/demo.json`: where the demo answers and who can sign in. */
export type DemoFile = { readonly url: string; readonly academies: readonly DemoAcademy[] };

const demoFile = (folder: string) => join(folder, 'demo.json');

/** @returns undefined when this data folder has no demo */
export function readDemoFile(folder: string): DemoFile | undefined {
  const file = demoFile(folder);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as DemoFile) : undefined;
}

/** Passwords stand in it: for this user only; whole or not at all. */
export function writeDemoFile(folder: string, demo: DemoFile): void {
  const file = demoFile(folder);
  writeFileSync(`${file}.new`, `${JSON.stringify(demo, null, 2)}\n`, { mode: 0o600 });
  renameSync(`${file}.new`, file);
}
