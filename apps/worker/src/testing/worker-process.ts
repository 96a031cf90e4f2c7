import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { Env } from '../env.ts';

const main = fileURLToPath(new URL('../main.ts', import.meta.url));

/** A worker in a process of its own, from the source. */
export const startWorkerProcess = (env: Env): ChildProcess => {
  const told = Object.entries(env).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, String(value)]],
  );
  return spawn(process.execPath, ['--import', 'tsx', main], {
    env: { PATH: process.env.PATH ?? '', ...Object.fromEntries(told) },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
};

export const killed = async (child: ChildProcess, signal: NodeJS.Signals): Promise<void> => {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, 'exit');
  child.kill(signal);
  await gone;
};
