import type { ClipLimits } from './limits.ts';
import type { PreparedClip } from './prepare.ts';

/** What the parent says to the child: one line of JSON on its standard input, which then stays open. */
export type ChildJob = {
  readonly sourcePath: string;
  readonly outFolder: string;
  readonly limits?: ClipLimits;
};

/** What the child says: lines of JSON on its standard output. `failed` is trouble that is not the clip's. */
export type ChildWord =
  | { readonly percent: number }
  | { readonly done: PreparedClip }
  | { readonly failed: string };
