import { spawn } from 'node:child_process';
import { once } from 'node:events';
import type { Camera } from './camera.ts';
import type { Look } from './look.ts';
import { framePainter } from './paint-frame.ts';
import type { Swing } from './swing.ts';

/**
 * Renders a swing to an H.264 MP4 with an installed `ffmpeg`; the same input and encoder give the same bytes.
 *
 * @param fps frames a second, @param path the file to write (overwritten)
 * @throws Error when ffmpeg is missing or fails; its last words are in the message
 */
export async function renderClip(
  swing: Swing,
  camera: Camera,
  look: Look,
  fps: number,
  path: string,
): Promise<void> {
  const paint = framePainter(swing, camera, look);
  const encoder = spawn('ffmpeg', encoderArguments(camera, fps, path), {
    stdio: ['pipe', 'ignore', 'pipe'],
  });
  const ended = once(encoder, 'close');
  let words = '';
  encoder.stderr.on('data', (chunk: Buffer) => {
    words = (words + chunk.toString()).slice(-2000);
  });
  const frames = Math.round(swing.durationS * fps);
  for (let frame = 0; frame < frames; frame += 1) {
    if (!encoder.stdin.write(Buffer.from(paint(frame / fps)))) await once(encoder.stdin, 'drain');
  }
  encoder.stdin.end();
  const [code] = await ended;
  if (code !== 0) throw new Error(`ffmpeg could not write ${path}: ${words}`);
}

function encoderArguments(camera: Camera, fps: number, path: string): string[] {
  return [
    ...['-hide_banner', '-loglevel', 'error', '-y'],
    ...[
      '-f',
      'rawvideo',
      '-pix_fmt',
      'rgba',
      '-s',
      `${camera.widthPx}x${camera.heightPx}`,
      '-r',
      `${fps}`,
      '-i',
      'pipe:0',
    ],
    ...[
      '-c:v',
      'libx264',
      '-preset',
      'slow',
      '-crf',
      '23',
      '-g',
      '10',
      '-keyint_min',
      '10',
      '-sc_threshold',
      '0',
      '-bf',
      '0',
      '-threads',
      '1',
    ],
    ...['-pix_fmt', 'yuv420p', '-colorspace', 'bt709', '-color_primaries', 'bt709', '-color_trc', 'bt709'],
    ...['-vf', 'scale=out_color_matrix=bt709:out_range=tv'],
    ...[
      '-flags',
      '+bitexact',
      '-fflags',
      '+bitexact',
      '-map_metadata',
      '-1',
      '-movflags',
      '+faststart',
      path,
    ],
  ];
}

/** Writes the picture at `timeS` of a clip as JPEG, as the worker makes a poster. @throws Error when ffmpeg fails */
export async function renderPoster(clip: string, timeS: number, path: string): Promise<void> {
  const args = ['-v', 'error', '-y', '-ss', timeS.toFixed(4), '-i', clip, '-frames:v', '1', '-q:v', '5'];
  const ffmpeg = spawn('ffmpeg', [...args, '-flags', '+bitexact', '-fflags', '+bitexact', path], {
    stdio: 'ignore',
  });
  const [code] = await once(ffmpeg, 'close');
  if (code !== 0) throw new Error(`ffmpeg could not write ${path}.`);
}
