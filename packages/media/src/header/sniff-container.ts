const startsWith = (head: Buffer, text: string, at = 0): boolean =>
  head.toString('latin1', at, at + text.length) === text;

/** Types of a first box of an ISO media or QuickTime file (ISO/IEC 14496-12; QuickTime allows more than `ftyp`). */
const firstBoxes = ['ftyp', 'styp', 'moov', 'mdat', 'free', 'skip', 'wide', 'pnot', 'uuid'];

/**
 * What a file is by its first bytes, whatever its name says.
 *
 * @param head at least the first 12 bytes
 */
export function sniffContainer(head: Buffer): 'iso-media' | 'other-video' | 'not-video' {
  if (firstBoxes.some((type) => startsWith(head, type, 4))) return 'iso-media';
  const matroska = head.length >= 4 && head.readUInt32BE(0) === 0x1a45dfa3;
  const riffVideo = startsWith(head, 'RIFF') && startsWith(head, 'AVI ', 8);
  const windows = head.length >= 4 && head.readUInt32BE(0) === 0x3026b275;
  const transportStream = head.length > 188 && head[0] === 0x47 && head[188] === 0x47;
  const programStream = head.length >= 4 && head.readUInt32BE(0) === 0x000001ba;
  const flash = startsWith(head, 'FLV');
  const ogg = startsWith(head, 'OggS');
  if (matroska || riffVideo || windows || transportStream || programStream || flash || ogg)
    return 'other-video';
  return 'not-video';
}
