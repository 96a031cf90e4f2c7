import type { Call, Reply } from '../operation-types.ts';

export const addClip = async ({ ctx, input }: Call<'addClip'>): Promise<Reply<'addClip'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
