import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { EncodedPacketSink, FilePathSource, Input, MP4 } from 'mediabunny';
import { beforeAll, describe, expect, it } from 'vitest';
import { scratchFolder } from './child/scratch-folder.ts';
import { transcoders } from './choose-transcoder.ts';
import { defaultLimits } from './header/limits.ts';
import { seenQuarters } from './look/seen-quarters.ts';
import { likeAPhone, paintClip, patchFile, remakeClip } from './made-clips.ts';
import { encodeSound, strikesAt } from './made-sound.ts';
import { type PreparedClip, prepareClip } from './prepare.ts';
import { soundRate } from './transcoder.ts';

const at = scratchFolder();
/** Thirty frames at an uneven pace, as phones film in poor light; whole ticks of 1/12000 s. */
const unevenS = Array.from({ length: 30 }, (_, i) => (i * 400 + (i % 3) * 80) / 12_000);
const place = '+51.5000-000.1200/';

beforeAll(async () => {
  await paintClip(at('clip.mp4'), { widthPx: 160, heightPx: 96, timesS: unevenS });
});

async function ready(prepared: Promise<PreparedClip>) {
  const clip = await prepared;
  if (!clip.ok) throw new Error(`refused: ${clip.code}`);
  return clip;
}

async function packetsOf(path: string) {
  const input = new Input({ formats: [MP4], source: new FilePathSource(path) });
  const track = await input.getPrimaryVideoTrack();
  if (track === null) throw new Error('no picture');
  const packets = [];
  for await (const packet of new EncodedPacketSink(track).packets()) packets.push(packet);
  const tracks = await input.getTracks();
  const codec = await track.getCodec();
  input.dispose();
  return { packets, codec, tracks: tracks.length };
}

/** Why a test that asks exiftool is passed over; empty where it is installed. */
const noExiftool = ((): string => {
  try {
    return execFileSync('exiftool', ['-ver']).length > 0 ? '' : ' (exiftool says nothing)';
  } catch {
    return ' (exiftool is not installed here)';
  }
})();

/** What a reader of hidden data finds beside the shape of the file itself: dates, places, names, makers. */
const toldBy = (path: string): string[] =>
  execFileSync('exiftool', ['-a', '-u', '-G1', '-s', path])
    .toString()
    .split('\n')
    .filter((line) => /^\[(?!ExifTool|System|Composite)/.test(line) && !/ 0000:00:00 00:00:00$/.test(line))
    .filter((line) =>
      /GPS|Title|at home|Date|Make|Model|Software|Author|Comment|Location|Copyright|Keys|UserData/.test(line),
    );

for (const transcoder of transcoders) {
  const reason = await transcoder.missing();
  describe.skipIf(reason !== null)(
    `the ${transcoder.name} transcoder${reason === null ? '' : ` (${reason})`}`,
    () => {
      const prepare = (name: string, change: Partial<typeof defaultLimits> = {}) =>
        prepareClip({
          sourcePath: at(name),
          outFolder: at(`${transcoder.name}-${name}`),
          limits: { ...defaultLimits, ...change },
          transcoder,
        });

      it('keeps every frame at its time, however uneven', async () => {
        const clip = await ready(prepare('clip.mp4'));
        const table: { timesS: number[] } = JSON.parse(readFileSync(clip.framesPath, 'utf8'));
        expect(clip.frames).toBe(30);
        expect(table.timesS).toHaveLength(30);
        for (const [i, timeS] of table.timesS.entries())
          expect(timeS).toBeCloseTo(unevenS[i] ?? Number.NaN, 6);
        const { packets } = await packetsOf(clip.renditionPath);
        expect(packets.map((packet) => packet.timestamp)).toEqual(table.timesS);
      });

      it('writes H.264 with a key frame every ten, in the order shown, index first; no sound where there was none', async () => {
        const clip = await ready(prepare('clip.mp4'));
        const { packets, codec, tracks } = await packetsOf(clip.renditionPath);
        expect({ codec, tracks }).toEqual({ codec: 'avc', tracks: 1 });
        const keys = packets.flatMap((packet, i) => (packet.type === 'key' ? [i] : []));
        expect(keys).toEqual([0, 10, 20]);
        expect(packets.every((packet, i) => packet.timestamp > (packets[i - 1]?.timestamp ?? -1))).toBe(true);
        const bytes = readFileSync(clip.renditionPath);
        expect(bytes.indexOf('moov')).toBeLessThan(bytes.indexOf('mdat'));
        expect(clip.sha256).toMatch(/^[0-9a-f]{64}$/);
      });

      it.each([
        [0, false, 'upperLeft'],
        [90, false, 'upperRight'],
        [180, false, 'lowerRight'],
        [270, false, 'lowerLeft'],
        [0, true, 'upperRight'],
      ] as const)(
        'turns a picture stored %i degrees off (mirrored: %s) upright',
        async (rotation, flip, bright) => {
          const name = `turned-${rotation}-${flip}.mp4`;
          await remakeClip(at('clip.mp4'), at(name), { rotation, flip });
          const clip = await ready(prepare(name));
          expect([clip.widthPx, clip.heightPx]).toEqual(rotation % 180 === 0 ? [160, 96] : [96, 160]);
          const quarters = Object.entries(await seenQuarters(clip.renditionPath));
          expect(quarters.filter(([, level]) => level > 150).map(([name]) => name)).toEqual([bright]);
        },
      );

      it('prepares HEVC with B-frames, its index at the end, in the order shown', async () => {
        await paintClip(at('phone.mp4'), { widthPx: 160, heightPx: 96, timesS: unevenS }, likeAPhone);
        const clip = await ready(prepare('phone.mp4'));
        const table: { timesS: number[] } = JSON.parse(readFileSync(clip.framesPath, 'utf8'));
        expect(table.timesS).toHaveLength(30);
        for (const [i, timeS] of table.timesS.entries())
          expect(timeS).toBeCloseTo(unevenS[i] ?? Number.NaN, 6);
        await remakeClip(at('clip.mp4'), at('index-last.mp4'), { indexLast: true });
        expect(await prepare('index-last.mp4')).toMatchObject({ ok: true, frames: 30 });
      });

      it('opens nothing but MP4 and MOV, even when the check before it is passed over', async () => {
        writeFileSync(
          at('list.mp4'),
          `#EXTM3U\n#EXT-X-TARGETDURATION:2\n#EXTINF:2,\n${at('clip.mp4')}\n#EXT-X-ENDLIST\n`,
        );
        const job = {
          ...{
            sourcePath: at('list.mp4'),
            renditionPath: at('list.out.mp4'),
          },
          ...{ widthPx: 160, heightPx: 96, keepSound: false },
          ...{ rotationDeg: 0, flipped: false, maxPixels: 1e7, onFrame: () => {} },
        };
        await expect(transcoder.transcode(job)).rejects.toMatchObject({ code: 'not_video' });
      });

      it('makes a poster, upright and no larger than asked', async () => {
        await remakeClip(at('clip.mp4'), at('side.mp4'), { rotation: 90 });
        const clip = await ready(prepare('side.mp4', { posterLongSidePx: 80 }));
        expect(jpegSize(readFileSync(clip.posterPath))).toEqual({ widthPx: 48, heightPx: 80 });
      });

      it('scales a large picture down to the long side asked for', async () => {
        expect(await prepare('clip.mp4', { renditionLongSidePx: 100 })).toMatchObject({
          widthPx: 100,
          heightPx: 60,
        });
      });

      it.each(['mp4', 'mov'] as const)(
        'strips place and title from a %s',
        async (kind) => {
          await remakeClip(at('clip.mp4'), at(`placed.${kind}`), { kind, tags: { '©xyz': place } });
          expect(readFileSync(at(`placed.${kind}`)).includes(place)).toBe(true);
          const clip = await ready(prepare(`placed.${kind}`));
          for (const path of [clip.renditionPath, clip.posterPath]) {
            const bytes = readFileSync(path);
            for (const trace of [place, 'at home', '©xyz', 'GPS'])
              expect(bytes.includes(Buffer.from(trace, 'latin1'))).toBe(false);
          }
        },
        30_000,
      );

      it.each(['mp4', 'mov'] as const)(
        `leaves nothing to tell of a %s with sound, by exiftool’s word${noExiftool}`,
        { skip: noExiftool !== '', timeout: 30_000 },
        async (kind) => {
          const sound = await encodeSound(strikesAt(2, [{ atS: 1, loud: 0.5 }]));
          await remakeClip(at('clip.mp4'), at(`told.${kind}`), { kind, sound, tags: { '©xyz': place } });
          expect(toldBy(at(`told.${kind}`)).join()).toMatch(/GPS/);
          const clip = await ready(prepare(`told.${kind}`));
          for (const path of [clip.renditionPath, clip.posterPath, clip.stripPath]) {
            expect(toldBy(path)).toEqual([]);
          }
        },
      );

      it('keeps the sound as it came, at its time, and hears the strike in it', async () => {
        const timesS = Array.from({ length: 60 }, (_, frame) => frame / 30);
        const film = { widthPx: 160, heightPx: 96, timesS, moving: { from: 36, to: 52 } };
        await paintClip(at('swing.mp4'), film);
        const sound = await encodeSound(strikesAt(2, [{ atS: 1.5, loud: 0.5 }]));
        await remakeClip(at('swing.mp4'), at('heard.mov'), { kind: 'mov', sound });
        const clip = await ready(prepare('heard.mov'));
        expect(await packetsOf(clip.renditionPath)).toMatchObject({ codec: 'avc', tracks: 2 });
        const { impact, window } = clip.suggestion;
        expect(impact).toMatchObject({ confidence: 'likely', others: 0, frame: 45, uFrames: 1 });
        // 4 m at 343.4 m/s are 11.6 ms; within 2 ms.
        expect(Math.abs((impact?.impactMs ?? 0) - (1500 - 11.6))).toBeLessThan(2);
        expect(window).toEqual({ first: 35, last: 53 });
        const samples = await transcoder.sound(clip.renditionPath);
        expect((samples?.length ?? 0) / soundRate).toBeCloseTo(2, 1);
      }, 30_000);

      it('gives one picture of one moment: the frame that was asked for, however uneven the pace', async () => {
        const clip = await ready(prepare('clip.mp4'));
        const { timesS }: { timesS: number[] } = JSON.parse(readFileSync(clip.framesPath, 'utf8'));
        const all: number[] = [];
        const size = { path: clip.renditionPath, widthPx: 160, heightPx: 96 };
        const grey = (rgb: Buffer): number => rgb.readUInt8((90 * 160 + 120) * 3);
        await transcoder.pictures({ ...size, keyFramesOnly: false, take: (rgb) => all.push(grey(rgb)) });
        expect(all).toHaveLength(30);
        expect(new Set(all.slice(0, 8)).size).toBeGreaterThan(4);
        const keys: number[] = [];
        await transcoder.pictures({ ...size, keyFramesOnly: true, take: (rgb) => keys.push(grey(rgb)) });
        expect(keys).toEqual([all[0], all[10], all[20]]);
        for (const frame of [0, 3, 11, 29]) {
          const [timeS = 0, next = timeS + 0.02] = timesS.slice(frame);
          const rgb = await transcoder.picture({ ...size, timeS, nextS: next - timeS });
          expect(grey(rgb)).toBe(all[frame]);
        }
      }, 30_000);

      it('refuses a clip half of whose frames are gone though its index is whole', async () => {
        const bytes = readFileSync(at('clip.mp4'));
        const half = (bytes.indexOf('mdat') + bytes.length) >> 1;
        writeFileSync(
          at('hollow.mp4'),
          Buffer.concat([bytes.subarray(0, half), Buffer.alloc(bytes.length - half)]),
        );
        expect(await prepare('hollow.mp4')).toEqual({ ok: false, code: 'truncated' });
      });

      it('refuses a picture larger than its header says', async () => {
        await paintClip(at('large.mp4'), { widthPx: 640, heightPx: 480, timesS: unevenS.slice(0, 4) });
        const size = (widthPx: number, heightPx: number) =>
          Buffer.from([widthPx >> 8, widthPx & 255, heightPx >> 8, heightPx & 255]);
        await patchFile(at('large.mp4'), at('lying.mp4'), size(640, 480), size(64, 48));
        expect(await prepare('lying.mp4', { maxPixels: 320 * 240 })).toEqual({
          ok: false,
          code: 'too_large',
        });
      });

      it('leaves nothing behind when it refuses', async () => {
        await remakeClip(at('clip.mp4'), at('cut.mp4'), {});
        truncateSync(at('cut.mp4'), 1700);
        expect(await prepare('cut.mp4')).toEqual({ ok: false, code: 'truncated' });
        await prepare('hollow.mp4');
        expect(readdirSync(at(`${transcoder.name}-hollow.mp4`))).toEqual([]);
      });

      it('stops when told to', async () => {
        const stopped = new AbortController();
        const prepared = prepareClip({
          ...{ sourcePath: at('clip.mp4'), outFolder: at('stopped'), transcoder, signal: stopped.signal },
          onProgress: () => stopped.abort(new Error('enough')),
        });
        await expect(prepared).rejects.toThrow('enough');
        expect(readdirSync(at('stopped'))).toEqual([]);
      });
    },
  );
}

/** Size from the frame header of a JPEG (ITU-T T.81, B.2.2). */
function jpegSize(bytes: Buffer) {
  const at = bytes.indexOf(Buffer.from([0xff, 0xc0]));
  return { widthPx: bytes.readUInt16BE(at + 7), heightPx: bytes.readUInt16BE(at + 5) };
}
