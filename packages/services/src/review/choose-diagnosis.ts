import type { Call, Reply } from '../operation-types.ts';

export const chooseDiagnosis = async ({
  ctx,
  input,
}: Call<'chooseDiagnosis'>): Promise<Reply<'chooseDiagnosis'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
