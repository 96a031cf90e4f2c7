export type PhotoKind = 'jpeg' | 'png' | 'webp' | 'other-picture' | 'no-picture';

const startsWith = (head: Buffer, hex: string, at = 0): boolean =>
  head.subarray(at, at + hex.length / 2).toString('hex') === hex;
const says = (head: Buffer, text: string, at = 0): boolean =>
  head.toString('latin1', at, at + text.length) === text;

/** Brands of pictures in an ISO media file (ISO/IEC 23008-12, 10; AV1 Image File Format, 6). */
const pictureBrands = ['heic', 'heix', 'heim', 'heis', 'hevc', 'mif1', 'msf1', 'avif', 'avis'];

/**
 * What a picture is by its first bytes, whatever its name says.
 *
 * @param head at least the first 16 bytes
 * @source JPEG: SOI and the next marker (ITU-T T.81, B.1.1.3); PNG (ISO/IEC 15948, 5.2); WebP (RFC 9649, 2.4); GIF, BMP and
 * TIFF by their well-known first bytes, from memory
 */
export function sniffPhoto(head: Buffer): PhotoKind {
  if (startsWith(head, 'ffd8ff')) return 'jpeg';
  if (startsWith(head, '89504e470d0a1a0a')) return 'png';
  if (says(head, 'RIFF') && says(head, 'WEBP', 8)) return 'webp';
  const isIsoPicture = says(head, 'ftyp', 4) && pictureBrands.some((brand) => says(head, brand, 8));
  const isOld = says(head, 'GIF8') || says(head, 'BM') || startsWith(head, '49492a00');
  return isIsoPicture || isOld || startsWith(head, '4d4d002a') ? 'other-picture' : 'no-picture';
}
