import { mkdir, open, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Metadata, Sharp } from 'sharp';
import { sniffPhoto } from './header/sniff-photo.ts';
import { hashOf, settle } from './settle.ts';

/** Why a photo is refused, in the order in which the reasons are looked for; the words stand in `services`. */
export type PhotoRefusal =
  | 'photo_empty'
  | 'photo_too_large'
  | 'not_photo'
  | 'photo_kind'
  | 'photo_too_small'
  | 'photo_broken';

/** What became of a photo. Sizes in pixels, upright; `sha256` (hex) is that of what was made of it. */
export type PreparedPhoto =
  | { readonly ok: true; readonly widthPx: number; readonly heightPx: number; readonly sha256: string }
  | { readonly ok: false; readonly code: PhotoRefusal };

/** A phone's photo has 12 to 50 million pixels; what it weighs is three or four bytes a pixel when it is open. */
export const photoLimits = {
  maxBytes: 20 * 1024 ** 2,
  maxSidePx: 12_000,
  maxPixels: 64_000_000,
  minSidePx: 64,
  /** Of what is kept: enough to see each finger on a large screen. */
  keptLongSidePx: 2048,
} as const;

const photoFile = 'photo.jpg';
const refused = (code: PhotoRefusal): PreparedPhoto => ({ ok: false, code });

/**
 * Checks a still picture and makes one of it that is upright, no larger than is needed and bare of everything that its
 * phone wrote into it, the place above all. Untrusted pictures belong in `preparePhotoInChild`.
 *
 * @throws Error for trouble that is not the picture's (disk full, no decoder): worth another try
 */
export async function preparePhoto(request: {
  readonly sourcePath: string;
  /** Made when missing; holds `photo.jpg` afterwards. */
  readonly outFolder: string;
}): Promise<PreparedPhoto> {
  const code = await refusalByBytes(request.sourcePath);
  if (code !== null) return refused(code);
  const picture = await opened(request.sourcePath);
  const size = await picture.metadata().catch(() => null);
  const wrong = size === null ? 'photo_broken' : refusalBySize(size);
  if (wrong !== null) return refused(wrong);
  const made = await upright(picture).catch(() => null);
  if (made === null) return refused('photo_broken');
  await mkdir(request.outFolder, { recursive: true });
  const [part, whole] = [join(request.outFolder, `.${photoFile}.part`), join(request.outFolder, photoFile)];
  try {
    await writeFile(part, made.data);
    await settle(part, whole);
  } finally {
    await rm(part, { force: true });
  }
  return { ok: true, widthPx: made.info.width, heightPx: made.info.height, sha256: await hashOf(whole) };
}

async function refusalByBytes(path: string): Promise<PhotoRefusal | null> {
  const file = await open(path, 'r');
  try {
    const { size } = await file.stat();
    if (size === 0) return 'photo_empty';
    if (size > photoLimits.maxBytes) return 'photo_too_large';
    const head = Buffer.alloc(16);
    await file.read(head, 0, head.length, 0);
    const kind = sniffPhoto(head);
    if (kind === 'no-picture') return 'not_photo';
    return kind === 'other-picture' ? 'photo_kind' : null;
  } finally {
    await file.close();
  }
}

/** A picture that ends early is an error here: half a hand is no grip. */
async function opened(path: string): Promise<Sharp> {
  const { default: sharp } = await import('sharp');
  sharp.concurrency(1);
  sharp.cache(false);
  return sharp(path, { failOn: 'error', limitInputPixels: photoLimits.maxPixels, sequentialRead: true });
}

function refusalBySize({ width, height }: Pick<Metadata, 'width' | 'height'>): PhotoRefusal | null {
  if (Math.max(width, height) > photoLimits.maxSidePx || width * height > photoLimits.maxPixels)
    return 'photo_too_large';
  return Math.min(width, height) < photoLimits.minSidePx ? 'photo_too_small' : null;
}

/** Turned as its camera was held; nothing of what was written into the file is carried over. */
function upright(picture: Sharp) {
  const side = photoLimits.keptLongSidePx;
  return picture
    .autoOrient()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: '#ffffff' })
    .jpeg({ quality: 86 })
    .toBuffer({ resolveWithObject: true });
}
