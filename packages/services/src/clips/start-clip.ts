import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';

/** What the upload door knows of a file before its first byte. */
export type NewClip = {
  readonly fileName: string;
  readonly view: 'face-on' | 'down-the-line';
  readonly swingLength: 'rehearsal' | 'hip-high' | 'three-quarter' | 'full';
  readonly lengthBytes: number;
};

export const startClip = async (_: { ctx: Context; input: NewClip }): Promise<Reply<'readClip'>> => {
  throw new Error('not yet');
};
