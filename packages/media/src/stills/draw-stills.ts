import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { chooseTranscoder } from '../choose-transcoder.ts';
import { readFrameTable } from '../header/frame-times.ts';
import { pictureOf } from '../jpeg.ts';
import { settle } from '../settle.ts';
import type { Transcoder } from '../transcoder.ts';
import { type Overlay, overlaySvg } from './overlay-svg.ts';

/** One picture to be drawn: a frame of a rendition with marks and lines in it. */
export type Still = Overlay & {
  /** A rendition of our own. */
  readonly sourcePath: string;
  readonly frame: number;
  /** Name of the file in the folder. */
  readonly file: string;
};

export type StillsRequest = {
  readonly stills: readonly Still[];
  /** Made when missing. */
  readonly outFolder: string;
  readonly transcoder?: Transcoder;
};

/** As large as a phone or a page shows it. */
const longSidePx = 1280;

/**
 * Draws pictures of frames with their marks burnt in, as JPEG without metadata. Marks are in the pixels of the rendition.
 *
 * @returns the names of the files made: a frame that its clip does not have is left out
 * @throws Error for trouble of our own: worth another try
 */
export async function drawStills({ stills, outFolder, ...more }: StillsRequest): Promise<readonly string[]> {
  const transcoder = more.transcoder ?? (await chooseTranscoder());
  await mkdir(outFolder, { recursive: true });
  const made: string[] = [];
  for (const still of stills) {
    const table = await readFrameTable(still.sourcePath);
    const timeS = table.timesS[still.frame];
    if (timeS === undefined) continue;
    const size = { widthPx: table.width, heightPx: table.height };
    const nextS = (table.timesS[still.frame + 1] ?? timeS + 0.02) - timeS;
    const rgb = await transcoder.picture({ path: still.sourcePath, timeS, nextS, ...size });
    const drawn = await (await pictureOf({ ...size, rgb }))
      .composite([{ input: Buffer.from(overlaySvg(still, size)) }])
      .toBuffer({ resolveWithObject: true });
    const { width, height, channels } = drawn.info;
    const { default: sharp } = await import('sharp');
    const jpeg = await sharp(drawn.data, { raw: { width, height, channels } })
      .resize({ width: longSidePx, height: longSidePx, fit: 'inside', withoutEnlargement: true })
      .flatten()
      .jpeg({ quality: 84, chromaSubsampling: '4:4:4' })
      .toBuffer();
    const part = join(outFolder, `.${still.file}.part`);
    await writeFile(part, jpeg);
    await settle(part, join(outFolder, still.file));
    made.push(still.file);
  }
  return made;
}
