import type { Call, Reply } from '../operation-types.ts';

export const readMarks = async ({ ctx, input }: Call<'readMarks'>): Promise<Reply<'readMarks'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
