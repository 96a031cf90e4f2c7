import type { Call, Reply } from '../operation-types.ts';

export const saveMarks = async ({ ctx, input }: Call<'saveMarks'>): Promise<Reply<'saveMarks'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
