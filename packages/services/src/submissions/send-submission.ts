import type { Call, Reply } from '../operation-types.ts';

export const sendSubmission = async ({
  ctx,
  input,
}: Call<'sendSubmission'>): Promise<Reply<'sendSubmission'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
