import type { Suggestion } from '@ballfirst/contracts/http/submissions';
import type { ClipLimits } from '../header/limits.ts';
import type { PreparedClip } from '../prepare.ts';
import type { PreparedPhoto } from '../prepare-photo.ts';
import type { Still } from '../stills/draw-stills.ts';

/** What the parent says to the child: one line of JSON on its standard input, which then stays open. */
export type ChildJob =
  | {
      readonly kind: 'prepare';
      readonly sourcePath: string;
      readonly outFolder: string;
      readonly limits?: ClipLimits;
    }
  | { readonly kind: 'stills'; readonly stills: readonly Still[]; readonly outFolder: string }
  | { readonly kind: 'look'; readonly sourcePath: string; readonly outFolder: string }
  | { readonly kind: 'photo'; readonly sourcePath: string; readonly outFolder: string };

/** What each kind of job brings. */
export type ChildResult = {
  readonly prepare: PreparedClip;
  /** Names of the files made. */
  readonly stills: readonly string[];
  readonly look: Suggestion;
  readonly photo: PreparedPhoto;
};

/** What the child says: lines of JSON on its standard output. `failed` is trouble that is not the clip's. */
export type ChildWord =
  | { readonly percent: number }
  | { readonly done: ChildResult[ChildJob['kind']] }
  | { readonly failed: string };
