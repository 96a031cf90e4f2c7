import type { Context } from '../context.ts';

export const expireClip = async (_: {
  ctx: Context;
  input: { clipId: string };
}): Promise<{ expired: boolean }> => {
  throw new Error('not yet');
};
