import type { Call, Reply } from '../operation-types.ts';

export const sendReply = async ({ ctx, input }: Call<'sendReply'>): Promise<Reply<'sendReply'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
