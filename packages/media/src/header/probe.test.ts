import { truncateSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { scratchFolder } from '../child/scratch-folder.ts';
import { paintClip, remakeClip, soundOnly } from '../made-clips.ts';
import { defaultLimits } from './limits.ts';
import { probeClip } from './probe.ts';

const at = scratchFolder();
const timesS = Array.from({ length: 30 }, (_, i) => i / 30);
const probe = (name: string, change: Partial<typeof defaultLimits> = {}) =>
  probeClip(at(name), { ...defaultLimits, ...change });

beforeAll(async () => {
  await paintClip(at('clip.mp4'), { widthPx: 160, heightPx: 96, timesS });
});

describe('probeClip', () => {
  it('reads size, rate and codec of a sound clip', async () => {
    const header = await probe('clip.mp4');
    expect(header).toMatchObject({ widthPx: 160, heightPx: 96, rotationDeg: 0, frames: 30, codec: 'avc' });
    expect(header.durationS).toBeCloseTo(1, 3);
  });

  it.each(['mp4', 'mov'] as const)(
    'gives the upright size of a %s filmed with the phone on its side',
    async (kind) => {
      await remakeClip(at('clip.mp4'), at(`side.${kind}`), { rotation: 90, kind });
      expect(await probe(`side.${kind}`)).toMatchObject({
        widthPx: 96,
        heightPx: 160,
        codedWidthPx: 160,
        rotationDeg: 90,
      });
    },
  );

  it('takes an index at the end of the file', async () => {
    await remakeClip(at('clip.mp4'), at('index-last.mp4'), { indexLast: true });
    expect(await probe('index-last.mp4')).toMatchObject({ frames: 30 });
  });

  it('refuses an empty file', async () => {
    writeFileSync(at('empty.mp4'), '');
    await expect(probe('empty.mp4')).rejects.toMatchObject({ code: 'empty' });
  });

  it.each([
    ['words', 'Dear coach, this is my swing. It was a good one. Kind regards and see you on Saturday.'],
    ['a playlist', `#EXTM3U\n#EXT-X-TARGETDURATION:2\n#EXTINF:2,\nfile:///etc/hostname\n#EXT-X-ENDLIST\n`],
    ['a manifest', '<?xml version="1.0"?><MPD><BaseURL>file:///etc/hostname</BaseURL></MPD>'],
    ['a list of files', "ffconcat version 1.0\nfile '/etc/hostname'\n"],
  ])('refuses %s named .mp4', async (_, text) => {
    writeFileSync(at('words.mp4'), text);
    await expect(probe('words.mp4')).rejects.toMatchObject({ code: 'not_video' });
  });

  it('refuses a container we do not open', async () => {
    writeFileSync(at('other.mp4'), Buffer.concat([Buffer.from('1a45dfa3', 'hex'), Buffer.alloc(600)]));
    await expect(probe('other.mp4')).rejects.toMatchObject({ code: 'container_not_allowed' });
  });

  it('refuses a clip whose end is missing, wherever the index stands', async () => {
    for (const indexLast of [false, true]) {
      await remakeClip(at('clip.mp4'), at('cut.mp4'), { indexLast });
      truncateSync(at('cut.mp4'), 1700);
      await expect(probe('cut.mp4')).rejects.toMatchObject({ code: 'truncated' });
    }
  });

  it('refuses sound without a picture', async () => {
    await soundOnly(at('sound.mov'));
    await expect(probe('sound.mov')).rejects.toMatchObject({ code: 'no_video' });
  });

  it('refuses a codec we do not decode', async () => {
    await remakeClip(at('clip.mp4'), at('vp9.mp4'), { codec: 'vp9' });
    await expect(probe('vp9.mp4')).rejects.toMatchObject({ code: 'codec_not_allowed' });
  });

  it('refuses a locked clip', async () => {
    await remakeClip(at('clip.mp4'), at('locked.mp4'), { tags: { '©cmt': 'encv sinf schm' } });
    await expect(probe('locked.mp4')).rejects.toMatchObject({ code: 'protected' });
  });

  it('refuses by bytes, pixels, seconds and frames', async () => {
    await expect(probe('clip.mp4', { maxBytes: 1000 })).rejects.toMatchObject({ code: 'too_large' });
    await expect(probe('clip.mp4', { maxPixels: 160 * 96 - 1 })).rejects.toMatchObject({ code: 'too_large' });
    await expect(probe('clip.mp4', { maxSeconds: 0.9 })).rejects.toMatchObject({ code: 'too_long' });
    await expect(probe('clip.mp4', { maxFrames: 29 })).rejects.toMatchObject({ code: 'too_long' });
  });
});
