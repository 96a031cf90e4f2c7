import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { renameSync } from 'node:fs';
import { soundRate } from './paint-sound.ts';

/**
 * Puts sound beside the picture of a clip, as AAC; the picture is taken over byte for byte.
 *
 * @throws Error when ffmpeg is missing or fails; its last words are in the message
 */
export async function addSound(path: string, samples: Int16Array): Promise<void> {
  const made = `${path}.part`;
  const args = [
    ...['-hide_banner', '-loglevel', 'error', '-y', '-i', path],
    ...['-f', 's16le', '-ar', `${soundRate}`, '-ac', '1', '-i', 'pipe:0', '-map', '0:v', '-map', '1:a'],
    ...['-c:v', 'copy', '-c:a', 'aac', '-b:a', '64k', '-map_metadata', '-1'],
    ...['-flags', '+bitexact', '-fflags', '+bitexact', '-movflags', '+faststart', '-f', 'mp4', made],
  ];
  const ffmpeg = spawn('ffmpeg', args, { stdio: ['pipe', 'ignore', 'pipe'] });
  const ended = once(ffmpeg, 'close');
  let words = '';
  ffmpeg.stderr.on('data', (chunk: Buffer) => {
    words = (words + chunk.toString()).slice(-2000);
  });
  ffmpeg.stdin.end(Buffer.from(samples.buffer));
  const [code] = await ended;
  if (code !== 0) throw new Error(`ffmpeg could not put sound into ${path}: ${words}`);
  renameSync(made, path);
}
