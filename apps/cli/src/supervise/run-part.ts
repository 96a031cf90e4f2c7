import { type ChildProcess, spawn } from 'node:child_process';
import { closeSync, openSync, readFileSync, renameSync, statSync } from 'node:fs';
import { signal } from '../processes.ts';
import { say } from '../say.ts';
import { Sentence } from '../sentence.ts';
import { until } from '../until.ts';
import { backOffMs } from './back-off.ts';

export type PartPlan = {
  readonly name: string;
  /** Node arguments: flags, script, its arguments. */
  readonly args: readonly string[];
  readonly cwd: string;
  readonly env: Readonly<Record<string, string>>;
  /** File that takes its words; more than 10 MB of older words are moved aside. */
  readonly log: string;
};

export type Part = {
  readonly pid: () => number | undefined;
  /** Rejects when the part ends three times before `settled` was called. */
  readonly failure: Promise<never>;
  /** From here on it is started again for ever. */
  readonly settled: () => void;
  /** SIGTERM, and SIGKILL to its whole group when it takes longer. */
  readonly stop: (graceMs: number) => Promise<void>;
};

const triesAtStart = 3;
const steadyMs = 60_000;
const largeLog = 10_000_000;

/** Runs one part of the service and starts it again, with growing pauses, whenever it ends by itself. */
export function runPart(plan: PartPlan): Part {
  let child: ChildProcess | undefined;
  let isStopping = false;
  let isSettled = false;
  let inARow = 0;
  let pause: NodeJS.Timeout | undefined;
  let giveUp: (reason: Error) => void = () => undefined;
  const failure = new Promise<never>((_, reject) => {
    giveUp = reject;
  });
  failure.catch(() => undefined);

  const launch = () => {
    const begun = performance.now();
    const started = spawnPart(plan);
    child = started;
    started.once('error', (error) => giveUp(error));
    started.once('exit', (code, by) => {
      if (started.pid !== undefined) signal(-started.pid, 'SIGKILL');
      if (isStopping) return;
      inARow = performance.now() - begun > steadyMs ? 1 : inARow + 1;
      const how = by ?? `code ${code}`;
      if (!isSettled && inARow >= triesAtStart) {
        return giveUp(
          new Sentence(`The ${plan.name} ended ${inARow} times at start (${how}): ${lastWords(plan.log)}`),
        );
      }
      const waitMs = backOffMs(inARow);
      say(`the ${plan.name} ended (${how}); starting it again in ${waitMs / 1000} s`);
      pause = setTimeout(launch, waitMs);
    });
  };
  launch();

  return {
    pid: () => child?.pid,
    failure,
    settled: () => {
      isSettled = true;
      inARow = 0;
    },
    stop: async (graceMs) => {
      isStopping = true;
      clearTimeout(pause);
      if (child !== undefined) await stopChild(child, graceMs);
    },
  };
}

/** A group of its own: a Ctrl-C in the terminal reaches us alone, and its own children can be ended with it. */
function spawnPart(plan: PartPlan): ChildProcess {
  const size = statSync(plan.log, { throwIfNoEntry: false })?.size ?? 0;
  if (size > largeLog) renameSync(plan.log, `${plan.log}.old`);
  const log = openSync(plan.log, 'a');
  const child = spawn(process.execPath, plan.args, {
    cwd: plan.cwd,
    env: plan.env,
    detached: true,
    stdio: ['ignore', log, log, 'ipc'],
  });
  closeSync(log);
  return child;
}

async function stopChild(child: ChildProcess, graceMs: number): Promise<void> {
  const hasEnded = () => child.pid === undefined || child.exitCode !== null || child.signalCode !== null;
  if (child.pid === undefined || hasEnded()) return;
  signal(child.pid, 'SIGTERM');
  await until(hasEnded, graceMs, 20);
  signal(-child.pid, 'SIGKILL');
  await until(hasEnded, 2_000, 20);
}

function lastWords(log: string): string {
  const line = readFileSync(log, 'utf8').trim().split('\n').at(-1) ?? '';
  return `${line.slice(0, 300)} (all its words: ${log}).`;
}
