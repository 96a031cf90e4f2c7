import type { Call, Reply } from '../operation-types.ts';

export const readInbox = async ({ ctx, input }: Call<'readInbox'>): Promise<Reply<'readInbox'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
