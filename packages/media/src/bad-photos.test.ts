import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { preparePhotoInChild } from './child/child.ts';
import { scratchFolder } from './child/scratch-folder.ts';
import { sniffPhoto } from './header/sniff-photo.ts';

// Photos of a grip, good and bad, by the whole way: the child with its limits.
const at = scratchFolder();
const entryPath = fileURLToPath(new URL('../dist/child-of-photos.mjs', import.meta.url));

/** A picture that is dark on its left half, so that a turn can be seen. */
const painted = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#d8c4a0' } }).composite([
    {
      input: { create: { width: width >> 1, height, channels: 3, background: '#101010' } },
      left: 0,
      top: 0,
    },
  ]);
const place = { IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'W' } };

beforeAll(async () => {
  await build({
    entryPoints: [fileURLToPath(new URL('./child/child-main.ts', import.meta.url))],
    ...{ outfile: entryPath, bundle: true, platform: 'node', format: 'esm' },
    ...{ external: ['node-av', 'sharp'], logLevel: 'error' },
  });
  const tagged = { exif: { IFD0: { Make: 'A phone', ImageDescription: 'my hands' }, ...place } };
  // Orientation 6: the camera was held upright, the top of the picture is the right side of what is stored (Exif 2.3, 4.6.4).
  await painted(800, 600)
    .withMetadata({ ...tagged, orientation: 6 })
    .jpeg()
    .toFile(at('turned.jpg'));
  await painted(3000, 2000).png().toFile(at('grip.png'));
  await painted(640, 480).webp().toFile(at('grip.webp'));
  await painted(16_000, 100).jpeg().toFile(at('wide.jpg'));
  await painted(40, 40).jpeg().toFile(at('tiny.jpg'));
  const whole = readFileSync(at('grip.png'));
  writeFileSync(at('cut.png'), whole.subarray(0, whole.length >> 1));
  const noisy = Buffer.alloc(900 * 900 * 3);
  for (let i = 0; i < noisy.length; i += 1) noisy[i] = (i * 7919) % 251;
  const raw = { raw: { width: 900, height: 900, channels: 3 } } as const;
  const jpeg = await sharp(noisy, raw).jpeg().toBuffer();
  writeFileSync(at('cut.jpg'), jpeg.subarray(0, jpeg.length >> 1));
  writeFileSync(at('words.jpg'), 'Dear coach, these are my hands.\n'.repeat(100));
  writeFileSync(at('drawing.jpg'), '<svg xmlns="http://www.w3.org/2000/svg" width="400" height="400"/>');
  writeFileSync(at('nothing.jpg'), '');
  writeFileSync(
    at('apple.heic'),
    Buffer.concat([Buffer.from('\0\0\0\x18ftypheic\0\0\0\0'), Buffer.alloc(600)]),
  );
  writeFileSync(at('heavy.jpg'), Buffer.concat([jpeg, Buffer.alloc(21 * 1024 ** 2)]));
  // A PNG whose header says 60 000 by 60 000: opened, it would weigh ten thousand million bytes.
  const bomb = Buffer.from(whole);
  bomb.writeUInt32BE(60_000, 16);
  bomb.writeUInt32BE(60_000, 20);
  writeFileSync(at('bomb.png'), bomb);
});

const prepare = (name: string) =>
  preparePhotoInChild({ entryPath, sourcePath: at(name), outFolder: at(`out-${name}`), timeoutMs: 30_000 });

describe('a photo of the grip', () => {
  it('comes out upright and bare: no place, no phone, no words', async () => {
    expect(readFileSync(at('turned.jpg')).includes('A phone')).toBe(true);
    const made = await prepare('turned.jpg');
    expect(made).toMatchObject({ ok: true, widthPx: 600, heightPx: 800 });
    const kept = readFileSync(at('out-turned.jpg/photo.jpg'));
    const { exif, xmp, iptc, icc, orientation, format } = await sharp(kept).metadata();
    expect([exif, xmp, iptc, icc, orientation ?? 1, format]).toEqual([
      ...[undefined, undefined, undefined, undefined, 1, 'jpeg'],
    ]);
    expect(kept.includes('A phone') || kept.includes('my hands')).toBe(false);
    // Stored dark on the left, shown dark on top.
    const { data } = await sharp(kept)
      .resize(1, 2, { fit: 'fill' })
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(data[0]).toBeLessThan(data[3] ?? 0);
  });

  it.each([
    ['grip.png', 2048, 1365],
    ['grip.webp', 640, 480],
  ])('%s is kept no larger than is needed', async (name, widthPx, heightPx) => {
    expect(await prepare(name)).toMatchObject({ ok: true, widthPx, heightPx });
  });

  it.each([
    ['nothing.jpg', 'photo_empty'],
    ['words.jpg', 'not_photo'],
    ['drawing.jpg', 'not_photo'],
    ['apple.heic', 'photo_kind'],
    ['heavy.jpg', 'photo_too_large'],
    ['wide.jpg', 'photo_too_large'],
    ['tiny.jpg', 'photo_too_small'],
    ['cut.jpg', 'photo_broken'],
    ['cut.png', 'photo_broken'],
  ])('%s is refused: %s', async (name, code) => {
    expect(await prepare(name)).toEqual({ ok: false, code });
  });

  it('that claims to be enormous is refused before it is opened', async () => {
    expect(await prepare('bomb.png')).toMatchObject({ ok: false });
  });
});

it.each([
  ['GIF89a', 'other-picture'],
  ['BM', 'other-picture'],
  ['\0\0\0\x18ftypavif', 'other-picture'],
  ['\0\0\0\x18ftypisom', 'no-picture'],
  ['RIFF\0\0\0\0AVI ', 'no-picture'],
  ['', 'no-picture'],
])('knows a picture by its first bytes: %j', (head, kind) => {
  expect(sniffPhoto(Buffer.from(head, 'latin1'))).toBe(kind);
});
