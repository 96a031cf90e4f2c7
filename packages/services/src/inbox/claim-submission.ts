import type { Call, Reply } from '../operation-types.ts';

export const claimSubmission = async ({
  ctx,
  input,
}: Call<'claimSubmission'>): Promise<Reply<'claimSubmission'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
