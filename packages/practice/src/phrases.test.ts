import { phrases } from '@ballfirst/library/phrases';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { describe, expect, it } from 'vitest';
import { fillPhrase, variablesIn } from './fill-phrase.ts';
import { offerPhrases, type SavedPhrase, searchPhrases } from './offer-phrases.ts';
import { amountOf, type PhraseFacts, phraseValues, plainVariables } from './phrase-values.ts';
import { templateOf } from './template-of.ts';

const facts: PhraseFacts = {
  player: 'Nora Winter',
  units: 'metric',
  club: '8-iron',
  fault: 'ground first',
  count: 6,
  balls: 10,
  cause: 'Hands behind the ball',
  drill: 'Line brush',
  readings: [{ key: 'handle-ahead-of-lead-thigh', unit: 'mm', value: -41 }],
};
const handle =
  'At the start your hands are [[{measured:handle-ahead-of-lead-thigh} ]]behind your {lead} thigh.';

describe('a phrase', () => {
  it('is filled with what was measured, in the units of the student', () => {
    expect(fillPhrase(handle, phraseValues(facts))).toBe(
      'At the start your hands are 4 cm behind your {lead} thigh.',
    );
    // 41 mm / 25.4 = 1.61 in; 25.4 mm to the inch is exact by definition (1959).
    expect(fillPhrase(handle, phraseValues({ ...facts, units: 'imperial' }))).toContain('1.6 in behind');
    expect(amountOf({ key: 'x', unit: 'deg', value: -12.4 }, 'metric')).toBe('12 degrees');
    expect(amountOf({ key: 'x', unit: 'ratio', value: 3.06 }, 'metric')).toBe('3.1 to 1');
    expect(() => amountOf({ key: 'x', unit: 'mm', value: Number.NaN }, 'metric')).toThrow(RangeError);
  });

  it('is told without its figure where nothing was measured, or not at all', () => {
    const none = phraseValues({ ...facts, readings: [] });
    expect(fillPhrase(handle, none)).toBe('At the start your hands are behind your {lead} thigh.');
    expect(fillPhrase('It was {measured:handle-ahead-of-lead-thigh}.', none)).toBeNull();
    const nothing = phraseValues({
      ...facts,
      readings: [{ key: 'handle-ahead-of-lead-thigh', unit: 'mm', value: 2 }],
    });
    expect(fillPhrase(handle, nothing)).not.toContain('0 cm');
    expect(fillPhrase('{count} of {balls}', phraseValues({ ...facts, count: null }))).toBeNull();
  });

  it('is offered where what it says is so, the cause at hand first', () => {
    const one = (id: string, given: Partial<SavedPhrase>): SavedPhrase => ({
      ...{ id, about: 'set-up', text: handle, causes: [], when: null },
      ...given,
    });
    const when = { key: 'handle-ahead-of-lead-thigh', side: 'below' } as const;
    const list = [one('any', {}), one('cause', { causes: ['handle-back'], when })];
    const read = (probabilityBelow: number) => [{ key: when.key, probabilityBelow, probabilityAbove: 0 }];
    const ids = (cause: string | null, readings: ReturnType<typeof read>) =>
      offerPhrases(list, { cause, values: phraseValues(facts), readings }).map(({ phrase }) => phrase.id);
    expect(ids('handle-back', read(0.9))).toEqual(['cause', 'any']);
    expect(ids('handle-back', read(0.2))).toEqual(['any']);
    expect(ids('handle-back', [])).toEqual(['cause', 'any']);
    expect(ids('hang-back', read(0.9))).toEqual(['any']);
    const offered = offerPhrases(list, { cause: null, values: phraseValues(facts), readings: [] });
    expect(searchPhrases(offered, 'Thigh set-up')).toHaveLength(1);
    expect(searchPhrases(offered, 'driver')).toEqual([]);
  });

  it('of the library asks for nothing that no swing has, and speaks of its own measurement only', () => {
    for (const { text, when } of phrases) {
      for (const name of variablesIn(text)) {
        const known = plainVariables.some((one) => one === name) || name === `measured:${when?.key ?? ''}`;
        expect([text, name, known]).toEqual([text, name, true]);
      }
      const unmeasured = fillPhrase(text, phraseValues({ ...facts, readings: [] }));
      expect(wordsForHand(unmeasured ?? '', 'left')).not.toMatch(/[{}[\]]/);
      expect(unmeasured).not.toBeNull();
    }
  });
});

describe('a starting point', () => {
  const words =
    'Nora, in 6 of your 10 balls the club met the ground first. Your hands are 4 cm behind your right thigh: that is all right for a wedge, not for an 8-iron. Your drill is “Line brush”.';

  it('holds variables where the reply told of this player', () => {
    expect(templateOf(words, phraseValues(facts), 'left')).toBe(
      '{player}, in {count} of your {balls} balls the club met the ground first. Your hands are {measured:handle-ahead-of-lead-thigh} behind your {lead} thigh: that is all right for a wedge, not for an {club}. Your drill is “{drill}”.',
    );
  });

  it('is filled again from the next swing', () => {
    const template = templateOf(words, phraseValues(facts), 'left');
    const next = phraseValues({
      ...facts,
      player: 'Per Dale',
      count: 4,
      readings: [{ key: 'handle-ahead-of-lead-thigh', unit: 'mm', value: -62 }],
    });
    expect(fillPhrase(template, next)).toContain('Per, in 4 of your 10 balls');
    expect(fillPhrase(template, next)).toContain('6 cm behind your {lead} thigh');
  });
});
