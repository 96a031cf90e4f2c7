import type { Call, Reply } from '../operation-types.ts';

export const readProgramme = async ({
  ctx,
  input,
}: Call<'readProgramme'>): Promise<Reply<'readProgramme'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
