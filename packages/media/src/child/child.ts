import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import type { ChildJob, ChildResult, ChildWord } from './child-words.ts';
import { defaultResources, limitedCommand, type ResourceLimits } from './resource-limits.ts';

/** How a child is run, whatever it does. */
export type ChildRun = {
  /** The file that runs `child-main` (bundled, or TypeScript with `nodeArguments` that load it). */
  readonly entryPath: string;
  readonly nodeArguments?: readonly string[];
  readonly resources?: ResourceLimits;
  /** Wall time after which the child is killed, in ms. */
  readonly timeoutMs?: number;
  readonly onProgress?: (percent: number) => void;
  readonly signal?: AbortSignal;
};

type JobOf<K extends ChildJob['kind']> = Omit<Extract<ChildJob, { kind: K }>, 'kind'>;
export type ChildRequest = JobOf<'prepare'> & ChildRun;

/** The child ended without an answer (killed, out of memory or time). Worth another try; then refuse as `not_video`. */
export class PreparingCrashed extends Error {
  override readonly name = 'PreparingCrashed';
}

const defaultTimeoutMs = 300_000;
/** Node otherwise reserves 8 GiB of addresses for any WebAssembly, more than the limit on the child. */
const sparingArguments = ['--disable-wasm-trap-handler'];

/**
 * `prepareClip` in a process of its own with limits, so that a bad file can hurt nothing here. The child ends when this
 * process does.
 *
 * @throws PreparingCrashed when it died; Error when it met trouble that is not the clip's; the signal's reason when aborted
 */
export const prepareInChild = ({ sourcePath, outFolder, limits, ...run }: ChildRequest) =>
  inChild({ kind: 'prepare', sourcePath, outFolder, ...(limits ? { limits } : {}) }, run);

/** `drawStills` in such a process. @throws as `prepareInChild` */
export const drawInChild = ({ stills, outFolder, ...run }: JobOf<'stills'> & ChildRun) =>
  inChild({ kind: 'stills', stills, outFolder }, run);

/** `lookAgain` in such a process. @throws as `prepareInChild` */
export const lookInChild = ({ sourcePath, outFolder, ...run }: JobOf<'look'> & ChildRun) =>
  inChild({ kind: 'look', sourcePath, outFolder }, run);

/** `preparePhoto` in such a process. @throws as `prepareInChild` */
export const preparePhotoInChild = ({ sourcePath, outFolder, ...run }: JobOf<'photo'> & ChildRun) =>
  inChild({ kind: 'photo', sourcePath, outFolder }, run);

async function inChild<K extends ChildJob['kind']>(
  job: Extract<ChildJob, { kind: K }>,
  run: ChildRun,
): Promise<ChildResult[K]> {
  run.signal?.throwIfAborted();
  const [command, ...args] = limitedCommand(
    [process.execPath, ...sparingArguments, ...(run.nodeArguments ?? []), run.entryPath],
    resourcesOf(run),
  );
  const child = spawn(command, args, {
    stdio: ['pipe', 'pipe', 'pipe'],
    env: childEnvironment(),
    detached: groups,
  });
  const timer = setTimeout(() => killGroup(child), run.timeoutMs ?? defaultTimeoutMs);
  const stop = () => killGroup(child);
  run.signal?.addEventListener('abort', stop, { once: true });
  try {
    // The child answers the kind of job that it was given.
    return (await answerOf(child, job, run)) as ChildResult[K];
  } finally {
    clearTimeout(timer);
    run.signal?.removeEventListener('abort', stop);
    killGroup(child);
  }
}

/** A loader of TypeScript reserves addresses that it never fills, so the limit on them is wider when one is named. */
function resourcesOf({ nodeArguments, resources = defaultResources }: ChildRun): ResourceLimits {
  const reserved = nodeArguments === undefined ? 0 : 16 * 1024 ** 3;
  return { ...resources, memoryBytes: resources.memoryBytes + reserved };
}

function answerOf(child: ChildProcess, job: ChildJob, run: ChildRun): Promise<ChildResult[ChildJob['kind']]> {
  return new Promise((resolve, reject) => {
    let words = '';
    let said: ChildWord | undefined;
    child.stderr?.on('data', (chunk: Buffer) => {
      words = (words + chunk.toString()).slice(-600);
    });
    child.stdin?.on('error', () => {});
    child.stdin?.write(`${JSON.stringify(job)}\n`);
    if (child.stdout !== null) {
      createInterface({ input: child.stdout }).on('line', (line) => {
        const word = readWord(line);
        if (word === undefined) return;
        if ('percent' in word) run.onProgress?.(word.percent);
        else said = word;
      });
    }
    child.on('error', reject);
    child.on('close', (code, signal) => {
      if (run.signal?.aborted) reject(run.signal.reason);
      else if (said !== undefined && 'done' in said) resolve(said.done);
      else if (said !== undefined && 'failed' in said) reject(new Error(said.failed));
      else
        reject(new PreparingCrashed(`The preparing process ended with ${signal ?? code}. ${words}`.trim()));
    });
  });
}

/** Lines that are no words of ours (a library talking) are passed over. */
function readWord(line: string): ChildWord | undefined {
  try {
    return JSON.parse(line) as ChildWord;
  } catch {
    return undefined;
  }
}

/** Secrets of this process stay here: the child gets the path to tools and a place for temporary files. */
function childEnvironment(): Record<string, string> {
  const kept = ['PATH', 'TMPDIR', 'TEMP', 'TMP', 'SystemRoot', 'LANG'];
  return Object.fromEntries(
    kept.flatMap((name) => {
      const value = process.env[name];
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

/** A group of its own, so that a tool the child started goes with it. */
const groups = process.platform !== 'win32';

function killGroup(child: ChildProcess): void {
  if (child.pid === undefined) return;
  try {
    if (groups) process.kill(-child.pid, 'SIGKILL');
    else child.kill('SIGKILL');
  } catch {
    // Already gone.
  }
}
