import { expect, it } from 'vitest';
import { soundKindOf } from './sound-kind.ts';

it.each([
  ['audio/webm', [0x1a, 0x45, 0xdf, 0xa3, 0x9f]],
  ['audio/mp4', [0, 0, 0, 0x1c, ...Buffer.from('ftypiso5')]],
  ['audio/ogg', [...Buffer.from('OggS\u0000\u0002')]],
])('knows %s by its first bytes', (kind, bytes) => {
  expect(soundKindOf(Uint8Array.from(bytes))).toBe(kind);
});

it('knows nothing else', () => {
  expect(soundKindOf(Buffer.from('<html>'))).toBeNull();
  expect(soundKindOf(new Uint8Array())).toBeNull();
  expect(soundKindOf(Buffer.from('xxxxftyq'))).toBeNull();
});
