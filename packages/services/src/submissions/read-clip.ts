import type { Call, Reply } from '../operation-types.ts';

export const readClip = async ({ ctx, input }: Call<'readClip'>): Promise<Reply<'readClip'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
