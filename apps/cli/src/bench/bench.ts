import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { say } from '../say.ts';
import { Sentence } from '../sentence.ts';
import { bars } from './bars.ts';
import { judge, type Measured } from './judge.ts';
import { describeMachine, giveReport } from './report.ts';

/**
 * `npm run bench -- [NAME ...] [--quick]`: measures, prints and writes `reports/NAME.json`.
 *
 * @returns exit code: 0 when every figure was measured and reaches its bar
 */
export async function bench(root: string, args: readonly string[]): Promise<number> {
  const known = namesOf(root);
  const isQuick = args.includes('--quick');
  const wanted = args.filter((argument) => argument !== '--quick');
  const strange = wanted.find((name) => !known.includes(name));
  if (strange !== undefined)
    throw new Sentence(`There is no bench ${strange}; there are ${known.join(', ')}.`);
  let isGood = true;
  for (const name of wanted.length > 0 ? wanted : known) {
    say(`bench ${name}${isQuick ? ' (quick)' : ''}`);
    const figures = judge(await measure(root, name, isQuick), bars[name] ?? {});
    giveReport(root, { name, at: new Date().toISOString(), machine: describeMachine(), figures });
    isGood &&= figures.every((figure) => figure.ok);
  }
  return isGood ? 0 : 1;
}

function namesOf(root: string): string[] {
  const files = readdirSync(join(root, 'tests', 'bench')).filter((file) => file.endsWith('.ts'));
  return files.map((file) => basename(file, '.ts')).sort();
}

/** Each bench runs in a process of its own, so that none leaves heat or leftovers to the next. */
async function measure(root: string, name: string, isQuick: boolean): Promise<Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-bench-'));
  const output = join(folder, 'measured.json');
  const script = join(root, 'tests', 'bench', `${name}.ts`);
  const child = spawn(process.execPath, ['--import', 'tsx', script], {
    cwd: root,
    env: { ...process.env, BENCH_OUTPUT: output, BENCH_QUICK: isQuick ? '1' : '0' },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  const code = await new Promise<number>((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (exit) => resolve(exit ?? 1));
  });
  try {
    if (!existsSync(output)) throw new Sentence(`The bench ${name} ended (code ${code}) without a result.`);
    return JSON.parse(readFileSync(output, 'utf8')) as Measured[];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
