import type { Call, Reply } from '../operation-types.ts';

export const readStudent = async ({ ctx, input }: Call<'readStudent'>): Promise<Reply<'readStudent'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
