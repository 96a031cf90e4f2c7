import { facePhrases } from './phrases/face.ts';
import { pathPhrases } from './phrases/path.ts';
import type { Phrase } from './phrases/phrase.ts';
import { pivotBackPhrases } from './phrases/pivot-back.ts';
import { pivotDownPhrases } from './phrases/pivot-down.ts';
import { pivotHeightPhrases } from './phrases/pivot-height.ts';
import { plainPhrases } from './phrases/plain.ts';
import { releasePhrases } from './phrases/release.ts';
import { ballAndStancePhrases } from './phrases/set-up-ball.ts';
import { handsAndHipsPhrases } from './phrases/set-up-hands.ts';
import { surroundingPhrases } from './phrases/surroundings.ts';

/** Every built-in phrase: those of the causes in their order, then what may be said with any. */
export const phrases: readonly Phrase[] = [
  ...surroundingPhrases,
  ...handsAndHipsPhrases,
  ...ballAndStancePhrases,
  ...pivotBackPhrases,
  ...pivotDownPhrases,
  ...pivotHeightPhrases,
  ...releasePhrases,
  ...pathPhrases,
  ...facePhrases,
  ...plainPhrases,
];
