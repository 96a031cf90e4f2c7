import type { Call, Reply } from '../operation-types.ts';

export const readTrials = async ({ ctx, input }: Call<'readTrials'>): Promise<Reply<'readTrials'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
