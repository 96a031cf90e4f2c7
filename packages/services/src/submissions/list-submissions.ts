import type { Call, Reply } from '../operation-types.ts';

export const listSubmissions = async ({
  ctx,
  input,
}: Call<'listSubmissions'>): Promise<Reply<'listSubmissions'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
