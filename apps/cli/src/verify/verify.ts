import { join } from 'node:path';
import { runStage, type Stage, type StageResult } from '../run-stage.ts';
import { say } from '../say.ts';

/** Everything that can be said about the code without a database, in the order of how fast it speaks. */
function stages(root: string): Stage[] {
  const tool = (...path: string[]) => join(root, 'node_modules', ...path);
  const quietTurbo = { TURBO_TELEMETRY_DISABLED: '1', DO_NOT_TRACK: '1', TURBO_NO_UPDATE_NOTIFIER: '1' };
  return [
    { name: 'format and lint', args: [tool('@biomejs', 'biome', 'bin', 'biome'), 'check', '.'] },
    {
      name: 'arrows',
      args: [
        tool('dependency-cruiser', 'bin', 'dependency-cruise.mjs'),
        ...['--config', '.dependency-cruiser.cjs', 'apps', 'packages', 'tests'],
      ],
    },
    {
      name: 'types',
      args: [tool('turbo', 'bin', 'turbo'), 'run', 'types', '--continue', '--output-logs=errors-only'],
      env: quietTurbo,
    },
    {
      name: 'unit tests',
      args: [tool('vitest', 'vitest.mjs'), 'run', '--project', 'unit'],
    },
  ];
}

/**
 * `npm run verify`: format, lint, arrows, types, unit tests; all of them, even after one has failed.
 *
 * @returns exit code
 */
export async function verify(root: string): Promise<number> {
  const results: StageResult[] = [];
  for (const stage of stages(root)) {
    say(`--- ${stage.name}`);
    results.push(await runStage(root, stage));
  }
  say('');
  for (const { name, isGood, seconds } of results) {
    say(`${isGood ? 'passed' : 'failed'}  ${seconds.toFixed(1).padStart(6)} s  ${name}`);
  }
  const failed = results.filter((result) => !result.isGood).length;
  say(`${results.length - failed} passed, ${failed} failed, 0 skipped`);
  return failed === 0 ? 0 : 1;
}
