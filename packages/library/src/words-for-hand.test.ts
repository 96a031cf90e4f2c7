import { describe, expect, it } from 'vitest';
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
    // The variables of a phrase are filled from the swing (practice/fill-phrase).
    const said = phrases.map(({ text }) => text.replaceAll(/\{(?!lead|trail)[a-z]+(:[a-z-]+)?\}/g, ''));
    const sentences = [...causes.map((cause) => cause.forStudent), ...said];
    for (const sentence of sentences) expect(wordsForHand(sentence, 'left')).not.toMatch(/[{}]/);
  });
});

describe('faults', () => {
  it('has words for each', () => {
    expect(faultList.map((fault) => fault.id)).toEqual([...faults]);
    expect(faultById('fat').oppositeMiss).toBe('thin');
  });
});
