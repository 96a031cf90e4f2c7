import type { Call, Reply } from '../operation-types.ts';

export const changeStanding = async ({
  ctx,
  input,
}: Call<'changeStanding'>): Promise<Reply<'changeStanding'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
