import type { Call, Reply } from '../operation-types.ts';

export const markReplyRead = async ({
  ctx,
  input,
}: Call<'markReplyRead'>): Promise<Reply<'markReplyRead'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
