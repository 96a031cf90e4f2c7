import { execFile, spawn } from 'node:child_process';
import { promisify } from 'node:util';
import { Refused } from './refusals.ts';
import { type TranscodeJob, type Transcoder, x264Quality, x264Settings } from './transcoder.ts';
import { uprightFilters } from './upright-filters.ts';

const run = promisify(execFile);

/** The `ffmpeg` found on the path, called with a list of arguments, never through a shell. */
export const ffmpegCli: Transcoder = { name: 'ffmpeg-cli', missing, transcode };

async function missing(): Promise<string | null> {
  try {
    // The banner goes to the standard error, the list to the output: one start of the tool tells both.
    const { stdout, stderr } = await run('ffmpeg', ['-nostdin', '-encoders']);
    const version = /^ffmpeg version n?(\d+)\.(\d+)/m.exec(stderr);
    const tooOld = version !== null && Number(version[1]) * 100 + Number(version[2]) < 501;
    if (tooOld) return 'the installed ffmpeg is older than 5.1';
    return stdout.includes('libx264') ? null : 'the installed ffmpeg cannot write H.264 (libx264)';
  } catch {
    return 'no ffmpeg on the path';
  }
}

async function transcode(job: TranscodeJob): Promise<number> {
  const { frames } = await runFfmpeg(renditionArguments(job), job);
  if (frames > 0) await runFfmpeg(posterArguments(job, frames), { ...job, onFrame: () => {} });
  return frames;
}

/** Only local files, only the MP4 and MOV reader, no files named inside the file. */
const guardedInput = (path: string, maxPixels: number) => [
  ...['-protocol_whitelist', 'file', '-f', 'mov', '-enable_drefs', '0', '-max_pixels', `${maxPixels}`],
  ...['-threads', '2', '-i', `file:${path}`],
];
// Damage does not end the run (`max_error_rate`): the count of frames decides afterwards.
const quiet =
  '-hide_banner -nostdin -loglevel error -progress pipe:1 -stats_period 0.2 -max_error_rate 1 -y'.split(' ');
const noMetadata = '-map_metadata -1 -map_chapters -1 -fflags +bitexact -flags:v +bitexact'.split(' ');

const filterText = (filters: ReturnType<typeof uprightFilters>) =>
  filters.map(([name, options]) => (options === '' ? name : `${name}=${options}`)).join(',');

function renditionArguments(job: TranscodeJob): string[] {
  // The tool turns the picture itself and drops the display matrix; told not to, it copies the matrix to the rendition.
  const upright = uprightFilters({ ...job, rotationDeg: 0, flipped: false });
  return [
    ...quiet,
    ...guardedInput(job.sourcePath, job.maxPixels),
    ...['-map', '0:v:0', '-an', '-sn', '-dn', '-vf', filterText(upright)],
    ...['-fps_mode', 'passthrough', '-enc_time_base', '-1', '-metadata:s:v', 'encoder='],
    ...[
      '-c:v',
      'libx264',
      '-preset',
      x264Quality.preset,
      '-crf',
      x264Quality.crf,
      '-x264-params',
      x264Settings,
    ],
    ...noMetadata,
    ...['-movflags', '+faststart', '-f', 'mp4', `file:${job.renditionPath}`],
  ];
}

function posterArguments(job: TranscodeJob, frames: number): string[] {
  const frame = Math.min(job.posterFrame, frames - 1);
  return [
    ...quiet,
    ...guardedInput(job.renditionPath, job.maxPixels),
    ...[
      '-vf',
      `select=eq(n\\,${frame}),scale=${job.posterWidthPx}:${job.posterHeightPx}:out_range=pc,format=yuvj420p`,
    ],
    ...['-frames:v', '1', '-q:v', '4', ...noMetadata],
    ...['-f', 'image2', '-update', '1', `file:${job.posterPath}`],
  ];
}

function runFfmpeg(args: readonly string[], job: TranscodeJob): Promise<{ frames: number }> {
  return new Promise((resolve, reject) => {
    const child = spawn('ffmpeg', args, { stdio: ['ignore', 'pipe', 'pipe'] });
    const stop = () => child.kill('SIGKILL');
    job.signal?.addEventListener('abort', stop, { once: true });
    let frames = 0;
    let words = '';
    child.stdout.on('data', (chunk: Buffer) => {
      for (const line of chunk.toString().matchAll(/^frame=\s*(\d+)/gm)) frames = Number(line[1]);
      job.onFrame(frames);
    });
    child.stderr.on('data', (chunk: Buffer) => {
      words = (words + chunk.toString()).slice(-8000);
    });
    child.on('error', reject);
    child.on('close', (code) => {
      job.signal?.removeEventListener('abort', stop);
      if (job.signal?.aborted) reject(job.signal.reason);
      else if (/exceeds specified max pixel count|Picture size .* is invalid/.test(words))
        reject(new Refused('too_large'));
      else if (code === 0) resolve({ frames });
      else if (/No space left|Permission denied|Input\/output error/.test(words)) reject(new Error(words));
      else reject(new Refused('not_video', words.slice(-300)));
    });
  });
}
