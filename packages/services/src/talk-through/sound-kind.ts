export const soundKinds = ['audio/webm', 'audio/mp4', 'audio/ogg'] as const;
export type SoundKind = (typeof soundKinds)[number];

const starts = (bytes: Uint8Array, at: number, with_: readonly number[]): boolean =>
  with_.every((byte, index) => bytes[at + index] === byte);

/**
 * What a recording is by its first bytes, whatever its sender says; null: none that a browser records.
 *
 * @source EBML (RFC 8794, 11.2.1) for WebM; `ftyp` at byte 4 (ISO/IEC 14496-12, 4.3) for MP4; `OggS` (RFC 3533, 6)
 */
export const soundKindOf = (bytes: Uint8Array): SoundKind | null => {
  if (starts(bytes, 0, [0x1a, 0x45, 0xdf, 0xa3])) return 'audio/webm';
  if (starts(bytes, 4, [0x66, 0x74, 0x79, 0x70])) return 'audio/mp4';
  if (starts(bytes, 0, [0x4f, 0x67, 0x67, 0x53])) return 'audio/ogg';
  return null;
};
