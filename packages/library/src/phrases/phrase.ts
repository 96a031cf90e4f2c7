import type { CameraView, FaultId } from '../types.ts';

/** What a phrase does: says what the swing shows, why that makes the miss, what to try unseen, what is good, or anything. */
export type PhraseKind = 'shows' | 'why' | 'unseen' | 'praise' | 'plain';

/**
 * A saved explanation a coach may put into a reply. `{lead}` and `{trail}` become left or right; other variables are filled
 * from the swing (`phrase-variables.ts`). What stands in double brackets is left out where its value was not measured.
 */
export type Phrase = {
  readonly id: string;
  readonly kind: PhraseKind;
  readonly about: string;
  readonly text: string;
  /** Absent: it may be said with any cause. */
  readonly causes?: readonly string[];
  /**
   * Said only where this measurement lies on this side of its band, or was not made; its figure's words fit that side.
   * `within` needs the measurement: praise rests on something.
   */
  readonly when?: { readonly key: string; readonly side: 'below' | 'above' | 'within' };
  /** Said only where the observation was not answered otherwise; `no` needs the answer: praise rests on something. */
  readonly seen?: { readonly key: string; readonly answer: 'yes' | 'no' };
  /** Said only with one of these misses, of a swing filmed in one of these views; absent: any. */
  readonly faults?: readonly FaultId[];
  readonly views?: readonly CameraView[];
};
