import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { floatsOf } from '../look/sound-samples.ts';
import type { PictureJob, PicturesJob, TranscodeJob, Transcoder } from '../transcoder.ts';
import {
  pictureArguments,
  picturesArguments,
  renditionArguments,
  soundArguments,
} from './ffmpeg-arguments.ts';
import { hasSound } from './has-sound.ts';
import { pictureCutter } from './picture-cutter.ts';
import { runFfmpeg } from './run-ffmpeg.ts';

const run = promisify(execFile);

/** The `ffmpeg` found on the path, called with a list of arguments, never through a shell. */
export const ffmpegCli: Transcoder = { name: 'ffmpeg-cli', missing, transcode, pictures, picture, sound };

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

function transcode(job: TranscodeJob): Promise<number> {
  return runFfmpeg(renditionArguments(job), { onProgress: job.onFrame, signal: job.signal });
}

async function pictures(job: PicturesJob): Promise<void> {
  const cutter = pictureCutter(job.widthPx * job.heightPx * 3, job.take);
  await runFfmpeg(picturesArguments(job), { onBytes: cutter, signal: job.signal });
}

async function picture(job: PictureJob): Promise<Buffer> {
  const taken: Buffer[] = [];
  const cutter = pictureCutter(job.widthPx * job.heightPx * 3, (rgb) => taken.push(rgb));
  await runFfmpeg(pictureArguments(job), { onBytes: cutter, signal: job.signal });
  const [first] = taken;
  if (first === undefined) throw new Error(`There is no picture at ${job.timeS} s`);
  return first;
}

async function sound(path: string, signal?: AbortSignal): Promise<Float32Array | null> {
  if (!(await hasSound(path))) return null;
  const parts: Buffer[] = [];
  await runFfmpeg(soundArguments(path), { onBytes: (bytes) => parts.push(bytes), signal });
  return floatsOf(parts);
}
