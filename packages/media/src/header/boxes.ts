import type { FileHandle } from 'node:fs/promises';

/** One box of an ISO media file (ISO/IEC 14496-12, 4.2): its four-letter type and where it lies in the file. */
export type Box = { readonly type: string; readonly offset: number; readonly size: number };

const mostBoxes = 100_000;

/** The boxes at the top level; the last one may say that it ends after the end of the file. */
export async function topBoxes(file: FileHandle, fileBytes: number): Promise<Box[]> {
  const boxes: Box[] = [];
  const head = Buffer.alloc(16);
  for (let offset = 0; offset + 8 <= fileBytes && boxes.length < mostBoxes; ) {
    await file.read(head, 0, 16, offset);
    const short = head.readUInt32BE(0);
    const size = short === 1 ? Number(head.readBigUInt64BE(8)) : short === 0 ? fileBytes - offset : short;
    if (size < 8) break;
    boxes.push({ type: head.toString('latin1', 4, 8), offset, size });
    offset += size;
  }
  return boxes;
}

const mostMovieBytes = 64 * 1024 ** 2;

/** The bytes of the movie box, where tracks and tables stand; null when there is none of a sane size. */
export async function movieBytes(file: FileHandle, boxes: readonly Box[]): Promise<Buffer | null> {
  const movie = boxes.find((box) => box.type === 'moov');
  if (movie === undefined || movie.size > mostMovieBytes) return null;
  const bytes = Buffer.alloc(movie.size);
  await file.read(bytes, 0, movie.size, movie.offset);
  return bytes;
}

/** True when a track is encrypted: an `encv` sample entry with its protection scheme (ISO/IEC 14496-12, 8.12). */
export const isProtected = (movie: Buffer): boolean =>
  movie.includes('encv') && movie.includes('sinf') && movie.includes('schm');
