import type { Call, Reply } from '../operation-types.ts';

export const readReply = async ({ ctx, input }: Call<'readReply'>): Promise<Reply<'readReply'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
