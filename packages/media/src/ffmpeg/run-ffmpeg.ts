import { spawn } from 'node:child_process';
import { Refused } from '../header/refusals.ts';

export type FfmpegRun = {
  readonly onProgress?: (frames: number) => void;
  /** Takes what the tool writes to its standard output. */
  readonly onBytes?: (bytes: Buffer) => void;
  readonly signal?: AbortSignal | undefined;
};

/**
 * Runs the tool to its end. Progress comes on its third channel, so that pictures and sound may come on the first.
 *
 * @returns how many frames it says it wrote
 * @throws Refused for a clip it cannot read, Error for a full disk and the like, the signal's reason when stopped
 */
export function runFfmpeg(args: readonly string[], run: FfmpegRun): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn('ffmpeg', args, { stdio: ['ignore', 'pipe', 'pipe', 'pipe'] });
    const stop = () => child.kill('SIGKILL');
    run.signal?.addEventListener('abort', stop, { once: true });
    let frames = 0;
    let words = '';
    child.stdio[3]?.on('data', (chunk: Buffer) => {
      for (const line of chunk.toString().matchAll(/^frame=\s*(\d+)/gm)) frames = Number(line[1]);
      run.onProgress?.(frames);
    });
    child.stdout?.on('data', (chunk: Buffer) => run.onBytes?.(chunk));
    child.stderr?.on('data', (chunk: Buffer) => {
      words = (words + chunk.toString()).slice(-8000);
    });
    child.on('error', reject);
    child.on('close', (code) => {
      run.signal?.removeEventListener('abort', stop);
      if (run.signal?.aborted) reject(run.signal.reason);
      else if (/exceeds specified max pixel count|Picture size .* is invalid/.test(words))
        reject(new Refused('too_large'));
      else if (code === 0) resolve(frames);
      else if (/No space left|Permission denied|Input\/output error/.test(words)) reject(new Error(words));
      else reject(new Refused('not_video', words.slice(-300)));
    });
  });
}
