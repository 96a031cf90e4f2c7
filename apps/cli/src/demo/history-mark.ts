import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** How far the demo's history is told: from which instant it is reckoned, and whether all of it is in. */
export type HistoryMark = { readonly from: string; readonly isDone: boolean };

const markFile = (folder: string) => join(folder, 'demo-history.json');

/** @returns undefined where there is no demo, or one without a history */
export function readHistoryMark(folder: string): HistoryMark | undefined {
  const file = markFile(folder);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as HistoryMark) : undefined;
}

/** Whole or not at all. */
export function writeHistoryMark(folder: string, mark: HistoryMark): void {
  const file = markFile(folder);
  writeFileSync(`${file}.new`, `${JSON.stringify(mark)}\n`, { mode: 0o600, flush: true });
  renameSync(`${file}.new`, file);
}
