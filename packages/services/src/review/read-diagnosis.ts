import type { Call, Reply } from '../operation-types.ts';

export const readDiagnosis = async ({
  ctx,
  input,
}: Call<'readDiagnosis'>): Promise<Reply<'readDiagnosis'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
