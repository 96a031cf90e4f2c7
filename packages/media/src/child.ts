import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import type { ChildJob, ChildWord } from './child-words.ts';
import type { PreparedClip } from './prepare.ts';
import { defaultResources, limitedCommand, type ResourceLimits } from './resource-limits.ts';

export type ChildRequest = ChildJob & {
  /** The file that runs `child-main` (bundled, or TypeScript with `nodeArguments` that load it). */
  readonly entryPath: string;
  readonly nodeArguments?: readonly string[];
  readonly resources?: ResourceLimits;
  /** Wall time after which the child is killed, in ms. */
  readonly timeoutMs?: number;
  readonly onProgress?: (percent: number) => void;
  readonly signal?: AbortSignal;
};

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
export async function prepareInChild(request: ChildRequest): Promise<PreparedClip> {
  request.signal?.throwIfAborted();
  const [command, ...args] = limitedCommand(
    [process.execPath, ...sparingArguments, ...(request.nodeArguments ?? []), request.entryPath],
    resourcesOf(request),
  );
  const child = spawn(command, args, {
    stdio: ['pipe', 'pipe', 'pipe'],
    env: childEnvironment(),
    detached: groups,
  });
  const timer = setTimeout(() => killGroup(child), request.timeoutMs ?? defaultTimeoutMs);
  const stop = () => killGroup(child);
  request.signal?.addEventListener('abort', stop, { once: true });
  try {
    return await answerOf(child, request);
  } finally {
    clearTimeout(timer);
    request.signal?.removeEventListener('abort', stop);
    killGroup(child);
  }
}

/** A loader of TypeScript reserves addresses that it never fills, so the limit on them is wider when one is named. */
function resourcesOf({ nodeArguments, resources = defaultResources }: ChildRequest): ResourceLimits {
  const reserved = nodeArguments === undefined ? 0 : 16 * 1024 ** 3;
  return { ...resources, memoryBytes: resources.memoryBytes + reserved };
}

function answerOf(child: ChildProcess, request: ChildRequest): Promise<PreparedClip> {
  const { sourcePath, outFolder, limits } = request;
  return new Promise((resolve, reject) => {
    let words = '';
    let said: ChildWord | undefined;
    child.stderr?.on('data', (chunk: Buffer) => {
      words = (words + chunk.toString()).slice(-600);
    });
    child.stdin?.on('error', () => {});
    child.stdin?.write(`${JSON.stringify({ sourcePath, outFolder, ...(limits ? { limits } : {}) })}\n`);
    if (child.stdout !== null) {
      createInterface({ input: child.stdout }).on('line', (line) => {
        const word = readWord(line);
        if (word === undefined) return;
        if ('percent' in word) request.onProgress?.(word.percent);
        else said = word;
      });
    }
    child.on('error', reject);
    child.on('close', (code, signal) => {
      if (request.signal?.aborted) reject(request.signal.reason);
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
