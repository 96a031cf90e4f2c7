import type { Context } from '../context.ts';

export const reportPercent = async (_: {
  ctx: Context;
  input: { clipId: string; fence: number; percent: number };
}): Promise<{ current: boolean }> => {
  throw new Error('not yet');
};
