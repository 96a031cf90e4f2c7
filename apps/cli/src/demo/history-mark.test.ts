import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readHistoryMark, writeHistoryMark } from './history-mark.ts';

it('keeps from when the past is told and whether all of it is in, for this user only', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-history-'));
  expect(readHistoryMark(folder)).toBeUndefined();
  const from = '2026-11-25T10:20:00.000Z';
  writeHistoryMark(folder, { from, isDone: false });
  expect(readHistoryMark(folder)).toEqual({ from, isDone: false });
  writeHistoryMark(folder, { from, isDone: true });
  expect(readHistoryMark(folder)).toEqual({ from, isDone: true });
  expect(statSync(join(folder, 'demo-history.json')).mode & 0o777).toBe(0o600);
  rmSync(folder, { recursive: true });
});
