import type { Call, Reply } from '../operation-types.ts';

export const logPractice = async ({ ctx, input }: Call<'logPractice'>): Promise<Reply<'logPractice'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
