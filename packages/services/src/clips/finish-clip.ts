import type { Context } from '../context.ts';
import type { Reply } from '../operation-types.ts';

export const finishClip = async (_: {
  ctx: Context;
  input: { clipId: string };
}): Promise<Reply<'readClip'>> => {
  throw new Error('not yet');
};
