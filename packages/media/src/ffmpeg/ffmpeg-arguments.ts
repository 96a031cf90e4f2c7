import {
  type PictureJob,
  type PicturesJob,
  soundFilters,
  type TranscodeJob,
  x264Quality,
  x264Settings,
} from '../transcoder.ts';
import { uprightFilters } from '../upright-filters.ts';

/** Only local files, only the MP4 and MOV reader, no files named inside the file. */
const guard = ['-protocol_whitelist', 'file', '-f', 'mov', '-enable_drefs', '0'];
// Damage does not end the run (`max_error_rate`): the count of frames decides afterwards.
const quiet = '-hide_banner -nostdin -loglevel error -max_error_rate 1 -y'.split(' ');
const progress = '-progress pipe:3 -stats_period 0.2'.split(' ');
const noMetadata = '-map_metadata -1 -map_chapters -1 -fflags +bitexact -flags:v +bitexact'.split(' ');
const rawPictures = '-an -sn -dn -fps_mode passthrough -f rawvideo -pix_fmt rgb24 pipe:1'.split(' ');

const filterText = (filters: readonly (readonly [string, string])[]) =>
  filters.map(([name, options]) => (options === '' ? name : `${name}=${options}`)).join(',');

export function renditionArguments(job: TranscodeJob): string[] {
  // The tool turns the picture itself and drops the display matrix; told not to, it copies the matrix to the rendition.
  const upright = uprightFilters({ ...job, rotationDeg: 0, flipped: false });
  const quality = ['-preset', x264Quality.preset, '-crf', x264Quality.crf, '-x264-params', x264Settings];
  return [
    ...[...quiet, ...progress, ...guard, '-max_pixels', `${job.maxPixels}`, '-threads', '2'],
    ...['-i', `file:${job.sourcePath}`, '-map', '0:v:0', '-sn', '-dn', '-vf', filterText(upright)],
    ...['-fps_mode', 'passthrough', '-enc_time_base', '-1', '-metadata:s:v', 'encoder='],
    ...['-c:v', 'libx264', ...quality],
    ...(job.keepSound ? ['-map', '0:a:0', '-c:a', 'copy', '-flags:a', '+bitexact'] : ['-an']),
    ...noMetadata,
    ...['-movflags', '+faststart', '-f', 'mp4', `file:${job.renditionPath}`],
  ];
}

export function picturesArguments(job: PicturesJob): string[] {
  // Key frames alone are read on one thread and left unsmoothed: a third less work, and nothing to see at this size.
  const reading = job.keyFramesOnly
    ? ['-threads', '1', '-skip_frame', 'nokey', '-skip_loop_filter', 'all']
    : ['-threads', '2'];
  return [
    ...[...quiet, ...guard, ...reading],
    ...['-i', `file:${job.path}`, '-vf', `scale=${job.widthPx}:${job.heightPx}:flags=area`, ...rawPictures],
  ];
}

export function pictureArguments(job: PictureJob): string[] {
  // Sought halfway before the frame begins, the first that is given back is the one that is meant.
  const seekS = Math.max(0, job.timeS - Math.min(job.nextS, 0.02) / 2);
  return [
    ...[...quiet, ...guard, '-threads', '1', '-ss', seekS.toFixed(6), '-i', `file:${job.path}`],
    ...['-vf', `scale=${job.widthPx}:${job.heightPx}:flags=bicubic`, '-frames:v', '1', ...rawPictures],
  ];
}

export const soundArguments = (path: string): string[] => [
  ...[...quiet, ...guard, '-copyts', '-i', `file:${path}`, '-map', '0:a:0', '-vn', '-sn', '-dn'],
  ...['-af', filterText(soundFilters), '-f', 'f32le', 'pipe:1'],
];
