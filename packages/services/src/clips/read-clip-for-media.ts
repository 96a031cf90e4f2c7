import type { Context } from '../context.ts';
import type { MediaFile } from './keys.ts';

export const readClipForMedia = async (_: {
  ctx: Context;
  input: { clipId: string; file: MediaFile };
}): Promise<{ key: string; type: string }> => {
  throw new Error('not yet');
};
