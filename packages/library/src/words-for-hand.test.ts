import { describe, expect, it } from 'vitest';
import { bandFor } from './bands.ts';
import { causes } from './causes.ts';
import { faultById, faultList } from './faults.ts';
import { phrases } from './phrases.ts';
import { faults } from './types.ts';
import { wordsForHand } from './words-for-hand.ts';

describe('wordsForHand', () => {
  it('says left and right for this player', () => {
    expect(wordsForHand('{lead} and {trail}', 'right')).toBe('left and right');
    expect(wordsForHand('{lead} and {trail}', 'left')).toBe('right and left');
  });
  it('leaves no brace behind in any sentence', () => {
    const sentences = [...causes.map((cause) => cause.forStudent), ...phrases.map((phrase) => phrase.text)];
    for (const sentence of sentences) expect(wordsForHand(sentence, 'left')).not.toMatch(/[{}]/);
  });
});

describe('faults', () => {
  it('has words for each', () => {
    expect(faultList.map((fault) => fault.id)).toEqual([...faults]);
    expect(faultById('fat').oppositeMiss).toBe('thin');
  });
});

describe('bandFor', () => {
  it('takes the first row that fits club and length', () => {
    expect(bandFor('ball-inside-lead-heel', '8-iron', 'full')).toMatchObject({ low: 80, high: 130 });
    expect(bandFor('head-shift-address-impact', 'driver', 'full')).toMatchObject({ low: -80 });
    expect(bandFor('head-shift-address-impact', '7-iron', 'full')).toMatchObject({ low: -30 });
  });
  it('knows no top below three-quarter, and nothing of the unknown', () => {
    expect(bandFor('hip-shift-address-top', '8-iron', 'hip-high')).toBeNull();
    expect(bandFor('luck', '8-iron', 'full')).toBeNull();
  });
});
