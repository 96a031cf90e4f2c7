import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { PreparingCrashed, prepareInChild } from './child/child.ts';
import { scratchFolder } from './child/scratch-folder.ts';
import { likeAPhone, paintClip, patchFile, remakeClip, soundOnly } from './made-clips.ts';

// Files that hurt, by the whole way: the child with its limits, first with the tool of the system, then without any.
const at = scratchFolder();
const entryPath = fileURLToPath(new URL('../dist/child-of-bad-files.mjs', import.meta.url));
const seconds = (count: number, perSecond: number) => Array.from({ length: count }, (_, i) => i / perSecond);
/** Whoever opens it to read waits without end: a child that answers has not opened it. */
const canary = at('canary.mp4');
const childMs = 8_000;
const size = (widthPx: number, heightPx: number) =>
  Buffer.from([widthPx >> 8, widthPx & 255, heightPx >> 8, heightPx & 255]);

beforeAll(async () => {
  await build({
    entryPoints: [fileURLToPath(new URL('./child/child-main.ts', import.meta.url))],
    ...{ outfile: entryPath, bundle: true, platform: 'node', format: 'esm' },
    ...{ external: ['node-av', 'sharp'], logLevel: 'error' },
  });
  execFileSync('mkfifo', [canary]);
  mkdirSync(at('no-tools'));
  await paintClip(at('clip.mp4'), { widthPx: 160, heightPx: 96, timesS: seconds(30, 30) });
  await paintClip(at('hevc.mp4'), { widthPx: 160, heightPx: 96, timesS: seconds(30, 30) }, likeAPhone);
  await remakeClip(at('clip.mp4'), at('index-last.mov'), { indexLast: true, kind: 'mov' });
  writeFileSync(at('text.mp4'), 'Dear coach, this is my swing. It was a good one.\n'.repeat(200));
  writeFileSync(at('nothing.mp4'), '');
  const whole = readFileSync(at('clip.mp4'));
  writeFileSync(at('truncated.mp4'), whole.subarray(0, Math.floor(whole.length * 0.6)));
  const last = readFileSync(at('index-last.mov'));
  writeFileSync(at('index-cut.mov'), last.subarray(0, last.indexOf('moov') + 40));
  const half = (whole.indexOf('mdat') + whole.length) >> 1;
  writeFileSync(
    at('hollow.mp4'),
    Buffer.concat([whole.subarray(0, half), Buffer.alloc(whole.length - half)]),
  );
  writeFileSync(at('other.mp4'), Buffer.concat([Buffer.from('1a45dfa3', 'hex'), Buffer.alloc(600)]));
  await remakeClip(at('clip.mp4'), at('unread.mp4'), { codec: 'vp9' });
  await remakeClip(at('clip.mp4'), at('locked.mp4'), { tags: { '©cmt': 'encv sinf schm' } });
  await soundOnly(at('sound.mov'));
  await paintClip(at('long.mp4'), { widthPx: 64, heightPx: 48, timesS: seconds(1201, 1) });
  await patchFile(at('clip.mp4'), at('wide.mp4'), size(160, 96), size(16_000, 96));
  await patchFile(at('clip.mp4'), at('huge.mp4'), size(160, 96), size(16_000, 9_000));
  writeFileSync(
    at('list.m3u8.mp4'),
    `#EXTM3U\n#EXT-X-TARGETDURATION:2\n#EXTINF:2,\n${canary}\n#EXT-X-ENDLIST\n`,
  );
  writeFileSync(at('manifest.mp4'), `<?xml version="1.0"?><MPD><BaseURL>file://${canary}</BaseURL></MPD>`);
  writeFileSync(at('concat.mp4'), `ffconcat version 1.0\nfile '${canary}'\n`);
  writeFileSync(at('list.mov'), withBox('ftyp', `qt  ${'\0'.repeat(8)}`, `#EXTM3U\n#EXTINF:2,\n${canary}\n`));
  writeFileSync(at('elsewhere.mov'), elsewhere(last));
});

/** A first box as a video has it, and then something else. */
function withBox(type: string, body: string, rest: string): Buffer {
  const box = Buffer.alloc(8);
  box.writeUInt32BE(8 + body.length, 0);
  box.write(type, 4, 'latin1');
  return Buffer.concat([box, Buffer.from(body, 'latin1'), Buffer.from(rest)]);
}

/**
 * A MOV whose frames are said to lie in another file: its data reference becomes an alias with an absolute path
 * (QuickTime File Format, "Data reference atoms"; layout of the alias from memory).
 */
function elsewhere(movie: Buffer): Buffer {
  const moov = movie.indexOf('moov') - 4;
  const entry = movie.indexOf('url ', moov) - 4;
  const name = Buffer.from(canary.length % 2 === 0 ? canary : `${canary}\0`);
  const alias = Buffer.alloc(12 + 150 + 4 + name.length + 4);
  alias.writeUInt32BE(alias.length, 0);
  alias.write('alis', 4, 'latin1');
  alias.writeUInt16BE(2, 162);
  alias.writeUInt16BE(name.length, 164);
  name.copy(alias, 166);
  alias.writeInt16BE(-1, 166 + name.length);
  const grown = alias.length - movie.readUInt32BE(entry);
  const made = Buffer.concat([
    movie.subarray(0, entry),
    alias,
    movie.subarray(entry + movie.readUInt32BE(entry)),
  ]);
  for (const box of ['moov', 'trak', 'mdia', 'minf', 'dinf', 'dref']) {
    const at = made.indexOf(box, moov) - 4;
    made.writeUInt32BE(made.readUInt32BE(at) + grown, at);
  }
  return made;
}

const prepare = (name: string, more: { timeoutMs?: number } = {}) =>
  prepareInChild({
    entryPath,
    sourcePath: at(name),
    outFolder: at(`out-${name}`),
    timeoutMs: childMs,
    ...more,
  });

it('has a canary that would tell', async () => {
  await expect(prepare('canary.mp4', { timeoutMs: 700 })).rejects.toBeInstanceOf(PreparingCrashed);
});

describe.each(['the tool of the system, where there is one', 'the embedded decoder'])('with %s', (which) => {
  it.each([
    ['text.mp4', 'not_video'],
    ['nothing.mp4', 'empty'],
    ['truncated.mp4', 'truncated'],
    ['index-cut.mov', 'truncated'],
    ['hollow.mp4', 'truncated'],
    ['other.mp4', 'container_not_allowed'],
    ['unread.mp4', 'codec_not_allowed'],
    ['locked.mp4', 'protected'],
    ['sound.mov', 'no_video'],
    ['long.mp4', 'too_long'],
    ['wide.mp4', 'too_large'],
    ['huge.mp4', 'too_large'],
    ['list.m3u8.mp4', 'not_video'],
    ['manifest.mp4', 'not_video'],
    ['concat.mp4', 'not_video'],
    ['list.mov', 'truncated'],
    ['elsewhere.mov', 'not_video'],
  ])('refuses %s as %s, reads no other file and leaves nothing behind', async (name, code) => {
    expect(await inPath(which, () => prepare(name))).toEqual({ ok: false, code });
    expect(madeIn(at(`out-${name}`))).toEqual([]);
  });

  it('takes a phone’s own: HEVC, MOV with its index at the end', async () => {
    for (const name of ['hevc.mp4', 'index-last.mov']) {
      expect(await inPath(which, () => prepare(name))).toMatchObject({ ok: true, frames: 30 });
    }
  }, 30_000);
});

/** Without tools on the path only the embedded decoder is left. */
async function inPath<T>(which: string, act: () => Promise<T>): Promise<T> {
  const path = process.env.PATH;
  if (which === 'the embedded decoder') process.env.PATH = at('no-tools');
  try {
    return await act();
  } finally {
    process.env.PATH = path;
  }
}

function madeIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}
