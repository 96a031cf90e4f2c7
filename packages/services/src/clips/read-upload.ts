import type { Context } from '../context.ts';

export type Upload = {
  readonly clipId: string;
  readonly key: string;
  readonly lengthBytes: number;
  readonly status: string;
  readonly expiresAt: Date;
};

/** An upload of the acting student, for the door to go on with. */
export const readUpload = async (_: { ctx: Context; input: { clipId: string } }): Promise<Upload> => {
  throw new Error('not yet');
};
