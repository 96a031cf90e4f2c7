import type { Call, Reply } from '../operation-types.ts';

export const acknowledgePain = async ({
  ctx,
  input,
}: Call<'acknowledgePain'>): Promise<Reply<'acknowledgePain'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
