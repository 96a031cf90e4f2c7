import type { Call, Reply } from '../operation-types.ts';

export const openReview = async ({ ctx, input }: Call<'openReview'>): Promise<Reply<'openReview'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
