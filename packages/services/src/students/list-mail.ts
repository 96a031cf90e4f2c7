import type { Call, Reply } from '../operation-types.ts';

export const listMail = async ({ ctx, input }: Call<'listMail'>): Promise<Reply<'listMail'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
