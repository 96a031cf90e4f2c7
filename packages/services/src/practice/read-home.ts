import type { Call, Reply } from '../operation-types.ts';

export const readHome = async ({ ctx, input }: Call<'readHome'>): Promise<Reply<'readHome'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
