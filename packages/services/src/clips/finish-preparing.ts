import type { Context } from '../context.ts';

export type Outcome =
  | {
      readonly kind: 'ready';
      readonly widthPx: number;
      readonly heightPx: number;
      readonly frames: number;
      readonly fps: number;
      readonly durationMs: number;
      readonly sha256: string;
    }
  | { readonly kind: 'refused'; readonly refusal: string };

export const finishPreparing = async (_: {
  ctx: Context;
  input: { clipId: string; fence: number; outcome: Outcome };
}): Promise<{ done: boolean }> => {
  throw new Error('not yet');
};
