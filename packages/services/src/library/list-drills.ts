import type { Call, Reply } from '../operation-types.ts';

export const listDrills = async ({ ctx, input }: Call<'listDrills'>): Promise<Reply<'listDrills'>> => {
  throw new Error(`not yet: ${ctx.requestId} ${typeof input}`);
};
