import type { Call, Reply } from '../operation-types.ts';

export const listStudents = async ({ ctx, input }: Call<'listStudents'>): Promise<Reply<'listStudents'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
