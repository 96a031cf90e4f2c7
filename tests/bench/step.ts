// Stepping in the review screen: numbers burnt into the frames of a clip, prepared as every clip is, read back from the
// canvas after each step in Chromium. A wrong number is a wrong frame. The quick run is the same run: it takes seconds.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import { findBrowser } from '../../apps/cli/src/test-run/find-browser.ts';
import { prepareClip } from '../../packages/media/src/prepare.ts';
import { writeNumberedClip } from './step-parts/numbered-clip.ts';
import type { Stepped } from './step-parts/page.ts';
import { file, serve } from './step-parts/serve.ts';

const frames = 240;
const fps = 240;

type Figure = { what: string; value?: number; unit: string; n?: number; why?: string };
const what = [
  ['wrong-frames', 'frames'],
  ['forward-p95-ms', 'ms'],
  ['backward-p95-ms', 'ms'],
] as const;

const p95 = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.ceil(values.length * 0.95) - 1] ?? Number.NaN;

async function stepThrough(executablePath: string, folder: string): Promise<Stepped> {
  const source = join(folder, 'numbered.mp4');
  await writeNumberedClip(source, frames, fps);
  const prepared = await prepareClip({ sourcePath: source, outFolder: folder });
  if (!prepared.ok) throw new Error(`The numbered clip was refused: ${prepared.code}`);
  const page = await build({
    entryPoints: [join(import.meta.dirname, 'step-parts', 'page.ts')],
    ...{ bundle: true, write: false, format: 'esm', platform: 'browser', logLevel: 'error' },
  });
  const script = Buffer.from(page.outputFiles[0]?.contents ?? []);
  const { url, server } = await serve({
    '/': {
      type: 'text/html',
      bytes: Buffer.from('<!doctype html><script type=module src=/page.js></script>'),
    },
    '/page.js': { type: 'text/javascript', bytes: script },
    '/rendition.mp4': file('video/mp4', prepared.renditionPath),
    '/frames.json': file('application/json', prepared.framesPath),
  });
  const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'];
  const browser = await chromium.launch({ executablePath, args });
  try {
    const tab = await browser.newPage();
    await tab.goto(url);
    await tab.waitForFunction(() => 'run' in window);
    return await tab.evaluate(() => (window as unknown as { run: () => Promise<Stepped> }).run());
  } finally {
    await browser.close();
    server.close();
  }
}

async function measure(): Promise<Figure[]> {
  const executablePath = findBrowser(process.env);
  if (executablePath === undefined) {
    const why = 'no Chromium was found; CHROMIUM_PATH may name one';
    return what.map(([name, unit]) => ({ what: name, unit, why }));
  }
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-bench-step-'));
  try {
    const { wrong, looked, forwardMs, backwardMs, byVideo } = await stepThrough(executablePath, folder);
    return [
      { what: 'wrong-frames', value: wrong, unit: 'frames', n: looked },
      { what: 'forward-p95-ms', value: p95(forwardMs), unit: 'ms', n: forwardMs.length },
      { what: 'backward-p95-ms', value: p95(backwardMs), unit: 'ms', n: backwardMs.length },
      { what: 'wrong-frames-by-video', value: byVideo.wrong, unit: 'frames', n: byVideo.looked },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const figures = await measure();
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
