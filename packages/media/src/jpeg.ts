import type { Sharp } from 'sharp';
import type { Size } from './rendition-size.ts';

/** 8-bit red, green, blue a pixel, row by row. */
export type RgbPicture = Size & { readonly rgb: Buffer };

/** The library of pictures: one thread, nothing kept, since the process it runs in has little and ends soon. */
export async function pictureOf({ widthPx, heightPx, rgb }: RgbPicture): Promise<Sharp> {
  const { default: sharp } = await import('sharp');
  sharp.concurrency(1);
  sharp.cache(false);
  return sharp(rgb, { raw: { width: widthPx, height: heightPx, channels: 3 } });
}

/** A JPEG without any metadata. @param quality 1 to 100 */
export async function jpegOf(picture: RgbPicture, quality: number): Promise<Buffer> {
  return (await pictureOf(picture)).jpeg({ quality, chromaSubsampling: '4:2:0' }).toBuffer();
}
