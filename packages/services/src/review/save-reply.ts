import type { Call, Reply } from '../operation-types.ts';

export const saveReply = async ({ ctx, input }: Call<'saveReply'>): Promise<Reply<'saveReply'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
