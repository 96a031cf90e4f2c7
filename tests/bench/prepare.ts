// Processor time to prepare 4 s of 1080p at 120 frames a second in HEVC, as the worker does it, against the ffmpeg command
// line making the same rendition, poster and list of frame times. Both decoders, each against that one baseline.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { prepareInChild } from '@ballfirst/media/child/child';
import { ffmpegCli } from '@ballfirst/media/ffmpeg/ffmpeg-cli';
import { x264Quality, x264Settings } from '@ballfirst/media/transcoder';

const quick = process.env.BENCH_QUICK === '1';
const seconds = quick ? 0.4 : 4;
const rounds = 5;
const entryPath = fileURLToPath(new URL('../../apps/worker/dist/media-child.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'ballfirst-bench-prepare-'));
const at = (name: string): string => join(folder, name);
const median = (values: number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const ffmpeg = (args: string): void => {
  execFileSync('ffmpeg', ['-hide_banner', '-loglevel', 'error', '-nostdin', '-y', ...args.split(' ')], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
};

/** Processor time of all children that have ended, theirs included, in seconds (proc(5): cutime and cstime, Linux). */
function spentByChildren(): number {
  const fields = readFileSync('/proc/self/stat', 'utf8').split(') ')[1]?.split(' ') ?? [];
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

async function spentBy(act: () => Promise<void> | void): Promise<number> {
  const before = spentByChildren();
  await act();
  return spentByChildren() - before;
}

/** A moving picture with grain, as a phone's sensor gives it: a still or smooth one would make decoding too cheap. */
const makeSource = (): void =>
  ffmpeg(
    `-f lavfi -i testsrc2=size=1920x1080:rate=120:duration=${seconds},noise=alls=6:allf=t -c:v libx265 -preset ultrafast -x265-params log-level=none:bframes=2 -crf 26 -pix_fmt yuv420p -tag:v hvc1 ${at('source.mov')}`,
  );

const byCommandLine = (): void => {
  const quality = `-preset ${x264Quality.preset} -crf ${x264Quality.crf} -x264-params ${x264Settings}`;
  ffmpeg(
    `-threads 2 -i ${at('source.mov')} -map 0:v:0 -an -fps_mode passthrough -pix_fmt yuv420p -c:v libx264 ${quality} -map_metadata -1 -movflags +faststart ${at('cli.mp4')}`,
  );
  ffmpeg(
    `-i ${at('cli.mp4')} -vf select=eq(n\\,${Math.floor(seconds * 12)}),scale=720:-2 -frames:v 1 ${at('cli.jpg')}`,
  );
  execFileSync('ffprobe', ['-v', 'error', '-show_entries', 'packet=pts_time', '-of', 'csv', at('cli.mp4')]);
};

/** By the worker's own child. An empty path leaves only the embedded decoder. */
const byWorker = async (path: string): Promise<void> => {
  const kept = process.env.PATH;
  process.env.PATH = path;
  try {
    const prepared = await prepareInChild({ entryPath, sourcePath: at('source.mov'), outFolder: at('out') });
    const frames = Math.round(seconds * 120);
    if (!prepared.ok || prepared.frames !== frames)
      throw new Error(`Not prepared: ${JSON.stringify(prepared)}`);
  } finally {
    process.env.PATH = kept;
  }
};

async function measure(): Promise<Record<string, unknown>[]> {
  const lacking = await ffmpegCli.missing();
  const names = ['cpu-vs-ffmpeg', 'cpu-vs-ffmpeg-of-the-system'];
  if (lacking !== null)
    return names.map((what) => ({ what, unit: 's', why: `there is no baseline: ${lacking}` }));
  makeSource();
  const spent: Record<string, number[]> = { line: [], embedded: [], system: [] };
  // In turns, so that all meet the same machine; the first round warms the disk and is not counted.
  for (let round = 0; round <= rounds; round += 1) {
    const line = await spentBy(byCommandLine);
    const embedded = await spentBy(() => byWorker(folder));
    const system = await spentBy(() => byWorker(process.env.PATH ?? ''));
    if (round === 0) continue;
    for (const [name, value] of Object.entries({ line, embedded, system })) spent[name]?.push(value);
  }
  const lines = spent.line ?? [];
  return [spent.embedded, spent.system].map((values = [], index) => ({
    what: names[index],
    value: median(values),
    unit: 's',
    baseline: `the ffmpeg command line, ${median(lines).toFixed(2)} s of processor time for ${seconds} s of video`,
    // Round by round: a machine that is slower for a while is so for both.
    ratio: median(values.map((value, round) => value / (lines[round] ?? Number.NaN))),
    n: values.length,
  }));
}

try {
  const figures = await measure();
  const output = process.env.BENCH_OUTPUT;
  if (output) writeFileSync(output, JSON.stringify(figures));
  else console.log(figures);
} finally {
  rmSync(folder, { recursive: true, force: true });
}
