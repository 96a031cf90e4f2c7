import type { Call, Reply } from '../operation-types.ts';

export const releaseSubmission = async ({
  ctx,
  input,
}: Call<'releaseSubmission'>): Promise<Reply<'releaseSubmission'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
