import type { Call, Reply } from '../operation-types.ts';

export const askToFilmAgain = async ({
  ctx,
  input,
}: Call<'askToFilmAgain'>): Promise<Reply<'askToFilmAgain'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
