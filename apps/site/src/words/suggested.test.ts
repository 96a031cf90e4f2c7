import { expect, it } from 'vitest';
import { suggestedWords } from './suggested.ts';

const heard = { frame: 120, impactMs: 1000, uMs: 5, uFrames: 1, others: 0 };

it('says where impact is heard, how surely, and what else is like it; never as a fact', () => {
  expect(suggestedWords.impact({ ...heard, confidence: 'likely' })).toBe(
    'The sound says impact here: frame 121 ± 1; likely',
  );
  expect(suggestedWords.impact({ ...heard, confidence: 'possible', others: 1 })).toMatch(
    /possible; one more sound is like it$/,
  );
  expect(suggestedWords.impact({ ...heard, confidence: 'unsure', others: 3 })).toMatch(
    /unsure; 3 more sounds are like it$/,
  );
});
