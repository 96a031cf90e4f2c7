import type { Context } from '../context.ts';

export const beginPreparing = async (_: {
  ctx: Context;
  input: { clipId: string };
}): Promise<{ fence: number; originalKey: string; lengthBytes: number; view: string } | null> => {
  throw new Error('not yet');
};
