import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { paintClip } from '../made-clips.ts';
import { type ChildRequest, PreparingCrashed, prepareInChild } from './child.ts';
import { defaultResources } from './resource-limits.ts';
import { scratchFolder } from './scratch-folder.ts';

const at = scratchFolder();
/** Bundled as the worker bundles it; beside the package, so that the optional decoder is found. */
const entryPath = fileURLToPath(new URL('../../dist/child-under-test.mjs', import.meta.url));

beforeAll(async () => {
  await build({
    entryPoints: [fileURLToPath(new URL('./child-main.ts', import.meta.url))],
    ...{
      outfile: entryPath,
      bundle: true,
      platform: 'node',
      format: 'esm',
      external: ['node-av', 'sharp'],
      logLevel: 'error',
    },
  });
  const timesS = Array.from({ length: 60 }, (_, i) => i / 60);
  await paintClip(at('clip.mp4'), { widthPx: 320, heightPx: 192, timesS });
});

const prepare = (change: Partial<ChildRequest> = {}) =>
  prepareInChild({ entryPath, sourcePath: at('clip.mp4'), outFolder: at('out'), ...change });

/** A child that does something else than preparing. */
function entryThat(name: string, code: string): string {
  writeFileSync(at(`${name}.mjs`), code);
  return at(`${name}.mjs`);
}

describe('prepareInChild', () => {
  it('prepares a clip within the default limits and tells how far it is', async () => {
    const percents: number[] = [];
    const clip = await prepare({ onProgress: (percent) => percents.push(percent) });
    expect(clip).toMatchObject({ ok: true, frames: 60, widthPx: 320 });
    expect(percents.at(-1)).toBe(100);
    expect(percents).toEqual([...new Set(percents)].toSorted((a, b) => a - b));
  });

  it('prepares with the embedded decoder where no tool is on the path, within the same limits', async () => {
    mkdirSync(at('no-tools'), { recursive: true });
    const path = process.env.PATH;
    try {
      process.env.PATH = at('no-tools');
      expect(await prepare()).toMatchObject({ ok: true, frames: 60 });
    } finally {
      process.env.PATH = path;
    }
  });

  it('brings a refusal back as a value', async () => {
    writeFileSync(at('words.mp4'), 'not a video at all, only words in a file');
    expect(await prepare({ sourcePath: at('words.mp4') })).toEqual({ ok: false, code: 'not_video' });
  });

  it('survives a child that crashes', async () => {
    const crash = prepare({ entryPath: entryThat('crash', 'process.abort();') });
    await expect(crash).rejects.toBeInstanceOf(PreparingCrashed);
  });

  it('ends a child that hangs', async () => {
    const hang = prepare({ entryPath: entryThat('hang', 'setInterval(() => {}, 1000);'), timeoutMs: 300 });
    await expect(hang).rejects.toBeInstanceOf(PreparingCrashed);
  });

  it('ends a child that computes, grows or writes without end', async () => {
    const small = { ...defaultResources, cpuSeconds: 1, memoryBytes: 2 * 1024 ** 3, fileBytes: 1024 ** 2 };
    const spin = prepare({ entryPath: entryThat('spin', 'for (;;) {}'), resources: small });
    await expect(spin).rejects.toBeInstanceOf(PreparingCrashed);
    const grow = entryThat('grow', 'const all = []; for (;;) all.push(Buffer.alloc(64 * 1024 ** 2, 1));');
    await expect(
      prepare({ entryPath: grow, resources: { ...small, cpuSeconds: 60 } }),
    ).rejects.toBeInstanceOf(PreparingCrashed);
    const write = entryThat(
      'write',
      `(await import('node:fs')).writeFileSync(${JSON.stringify(at('big'))}, Buffer.alloc(4e6));`,
    );
    await expect(prepare({ entryPath: write, resources: small })).rejects.toBeInstanceOf(PreparingCrashed);
  }, 30_000);

  it('keeps the secrets of the parent from the child', async () => {
    process.env.SESSION_SECRET_FOR_TEST = 'open sesame';
    const tell = entryThat(
      'tell',
      'console.log(JSON.stringify({ failed: Object.keys(process.env).join(" ") }));',
    );
    await expect(prepare({ entryPath: tell })).rejects.toThrow(/^(?!.*SESSION_SECRET)/);
    delete process.env.SESSION_SECRET_FOR_TEST;
  });

  it('stops when told to', async () => {
    const stopped = new AbortController();
    const prepared = prepare({
      signal: stopped.signal,
      onProgress: () => stopped.abort(new Error('enough')),
    });
    await expect(prepared).rejects.toThrow('enough');
  });
});

describe('child-main', () => {
  it.each([
    [true, [null, 'SIGKILL']],
    [false, [1, null]],
  ])('ends when its parent goes, with its tools when it leads a group (%s)', async (detached, expected) => {
    const child = spawn(process.execPath, [entryPath], { stdio: ['pipe', 'ignore', 'ignore'], detached });
    child.stdin.end(
      `${JSON.stringify({ kind: 'prepare', sourcePath: at('clip.mp4'), outFolder: at('orphan') })}\n`,
    );
    expect(await once(child, 'exit')).toEqual(expected);
  });
});
