import { causes } from '@ballfirst/library/causes';
import { describe, expect, it } from 'vitest';
import { likelyCauses } from './likely-causes.ts';

const ranked = (causeId: string, probability: number) => ({
  causeId,
  probability,
  share: 0.1,
  score: 0.1,
  logRatio: 2,
  factors: [],
});
const ranking = [ranked('sway-away', 0.9), ranked('handle-back', 0.7), ranked('rushed', 0.1)];

describe('likelyCauses', () => {
  it('puts the chosen cause first and keeps the likely ones', () => {
    const found = likelyCauses({ chosenCauseId: 'hang-back', fault: 'fat', ranking, causes });
    expect(found).toEqual([
      { id: 'hang-back', probability: 1, weight: 3 },
      { id: 'sway-away', probability: 0.9, weight: 3 },
      { id: 'handle-back', probability: 0.7, weight: 3 },
    ]);
  });
  it('names the chosen one once', () => {
    const found = likelyCauses({ chosenCauseId: 'sway-away', fault: 'thin', ranking, causes });
    expect(found.map(({ id }) => id)).toEqual(['sway-away', 'handle-back']);
    expect(found[0]?.weight).toBe(2);
  });
  it('refuses an unknown cause', () => {
    expect(() => likelyCauses({ chosenCauseId: 'luck', fault: 'fat', ranking, causes })).toThrow(RangeError);
  });
});
