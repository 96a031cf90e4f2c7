import type { Call, Reply } from '../operation-types.ts';

export const readSubmission = async ({
  ctx,
  input,
}: Call<'readSubmission'>): Promise<Reply<'readSubmission'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
