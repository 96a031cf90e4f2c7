import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

/** How many journeys there are, read from their source without running anything. */
export function countJourneys(root: string, filters: readonly string[]): number {
  const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
  const args = [vitest, 'list', '--project', 'journeys', '--static-parse', '--json', ...filters];
  const listed = execFileSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  return (JSON.parse(listed.slice(listed.indexOf('['))) as unknown[]).length;
}
