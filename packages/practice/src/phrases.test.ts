import { causes } from '@ballfirst/library/causes';
import { measuredVariables, variablesIn } from '@ballfirst/library/phrase-variables';
import { phrases } from '@ballfirst/library/phrases';
import { faults } from '@ballfirst/library/types';
import { wordsForHand } from '@ballfirst/library/words-for-hand';
import { describe, expect, it } from 'vitest';
import { amountOf, doubtOf } from './amount-of.ts';
import { bandWords } from './band-words.ts';
import { fillPhrase } from './fill-phrase.ts';
import { offerPhrases, searchPhrases } from './offer-phrases.ts';
import { type PhraseFacts, phraseValues } from './phrase-values.ts';
import { type SavedPhrase, savedPhrase } from './saved-phrase.ts';
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
  readings: [{ key: 'handle-ahead-of-lead-thigh', unit: 'mm', value: -41, u: 9 }],
  ground: { fat: 0.69, forwardMm: 63 },
};
const here = { fault: 'fat', view: 'face-on', observations: [] } as const;
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

  it('tells how often the ground comes first and how far forward, only where there is something to move', () => {
    const text = 'About {often}; {forward} nearer the target.';
    expect(fillPhrase(text, phraseValues(facts))).toBe('About 7 in 10; 6 cm nearer the target.');
    // 63 mm / 25.4 = 2.48 in.
    expect(fillPhrase(text, phraseValues({ ...facts, units: 'imperial' }))).toContain('2.5 in nearer');
    const sure = phraseValues({ ...facts, ground: { fat: 0.999, forwardMm: 63 } });
    expect(sure.often).toBe('9 in 10');
    for (const ground of [null, { fat: 0.06, forwardMm: 0 }]) {
      expect(fillPhrase(text, phraseValues({ ...facts, ground }))).toBeNull();
    }
    const said = phrases.find(({ id }) => id === 'low-point-forward')?.text ?? '';
    expect(templateOf(fillPhrase(said, phraseValues(facts)) ?? '', phraseValues(facts), 'right')).toBe(said);
    expect(said).toContain('not as a promise');
  });

  it('is offered where what it says is so, the cause at hand first', () => {
    const one = (id: string, given: Partial<SavedPhrase>): SavedPhrase => ({
      ...{ id, kind: 'shows', about: 'set-up', text: handle, causes: [], when: null },
      ...{ seen: null, faults: [], views: [] },
      ...given,
    });
    const when = { key: 'handle-ahead-of-lead-thigh', side: 'below' } as const;
    const list = [one('any', {}), one('cause', { causes: ['handle-back'], when })];
    const band = { low: -30, high: 30 };
    const read = (probabilityBelow: number) => [
      { key: when.key, probabilityBelow, probabilityAbove: 0, band },
    ];
    const ids = (cause: string | null, readings: ReturnType<typeof read>) =>
      offerPhrases(list, { ...here, cause, values: phraseValues(facts), readings }).map(
        ({ phrase }) => phrase.id,
      );
    expect(ids('handle-back', read(0.9))).toEqual(['cause', 'any']);
    expect(ids('handle-back', read(0.2))).toEqual(['any']);
    expect(ids('handle-back', [])).toEqual(['cause', 'any']);
    expect(ids('hang-back', read(0.9))).toEqual(['any']);
    const offered = offerPhrases(list, {
      ...{ ...here, cause: null, values: phraseValues(facts), readings: [] },
    });
    expect(searchPhrases(offered, 'Thigh set-up')).toHaveLength(1);
    expect(searchPhrases(offered, 'driver')).toEqual([]);
  });

  it('tells the doubt, the side and the band in the units of the student', () => {
    const told = { key: 'hip-shift-address-top', unit: 'mm', value: -61, u: 9, band: { low: -30, high: 30 } };
    const values = phraseValues({ ...facts, readings: [told] });
    expect(values['doubted:hip-shift-address-top']).toBe('6 cm (give or take 1 cm)');
    expect(values['way:hip-shift-address-top']).toBe('away from the target');
    expect(bandWords(told, 'metric')).toBe('between 3 cm away from the target and 3 cm towards the target');
    // 30 mm / 25.4 = 1.18 in; 9 mm = 0.35 in.
    expect(bandWords(told, 'imperial')).toContain('1.2 in away');
    expect(doubtOf(told, 'imperial')).toBe('0.4 in');
    expect(doubtOf({ ...told, u: 2 }, 'metric')).toBe('half a cm');
    expect(doubtOf({ ...told, unit: 'deg', u: 0.2 }, 'metric')).toBe('1 degree');
    const bandOf = (key: string, unit: string, low: number | null, high: number | null) =>
      bandWords({ key, unit, value: 0, band: { low, high } }, 'metric');
    expect(bandOf('hip-shift-top-lead-arm-down', 'mm', 30, 130)).toBe(
      'between 3 cm and 13 cm towards the target',
    );
    expect(bandOf('shaft-lean-at-address', 'deg', 0, 6)).toBe('up to 6 degrees towards the target');
    expect(bandOf('trunk-bend-at-address', 'deg', -12, -4)).toBe('between 4 degrees and 12 degrees back');
    expect(bandOf('hip-past-ball-at-finish', 'mm', 0, null)).toBe('past the ball');
    expect(bandOf('lead-elbow-after-impact', 'deg', null, 18)).toBe('up to 18 degrees');
    expect(bandOf('tempo-ratio', 'ratio', 2, 4)).toBe('between 2.0 to 1 and 4.0 to 1');
    expect(bandOf('tempo-ratio', 'ratio', null, null)).toBeNull();
    expect(bandOf('unheard-of', 'mm', 1, 2)).toBeNull();
  });

  it('of the library is whole with its figures and without: nothing is told half filled', () => {
    for (const { text, kind, when, views = [] } of phrases) {
      const reading = { key: when?.key ?? '', unit: 'mm', value: -41, u: 9, band: { low: -30, high: 30 } };
      const known = phraseValues({ ...facts, readings: when === undefined ? [] : [reading] });
      const bare = phraseValues({ ...facts, readings: [] });
      for (const filled of [fillPhrase(text, known), fillPhrase(text, bare)]) {
        if (filled === null) continue;
        const said = wordsForHand(filled, 'left');
        expect(said).not.toMatch(/[{}[\]]/);
        expect(said).not.toMatch(/ {2}| [.,:;]|\(\)/);
        expect(said).toMatch(/[.!?]$/);
      }
      expect(fillPhrase(text, known)).not.toBeNull();
      if (kind !== 'praise') expect(fillPhrase(text, bare)).not.toBeNull();
      if (kind === 'unseen') {
        expect(
          variablesIn(text).filter((name) => measuredVariables.some((one) => name.startsWith(one))),
        ).toEqual([]);
        expect(views).toHaveLength(1);
      }
    }
  });

  it('speaks of every cause in every view, and praises only what was looked at', () => {
    const all = phrases.map(savedPhrase);
    for (const cause of causes) {
      for (const view of ['face-on', 'down-the-line'] as const) {
        for (const fault of Object.keys(cause.brings)) {
          const miss = faults.find((one) => one === fault);
          if (miss === undefined) continue;
          const given = { view, fault: miss, cause: cause.id, values: phraseValues(facts), readings: [] };
          const kinds = offerPhrases(all, { ...given, observations: [] })
            .filter(({ phrase }) => phrase.causes.includes(cause.id))
            .map(({ phrase }) => phrase.kind);
          expect([cause.id, view, kinds.includes('shows') || kinds.includes('unseen')]).toEqual([
            cause.id,
            view,
            true,
          ]);
          expect(kinds).toContain('why');
          expect(kinds).not.toContain('praise');
        }
      }
    }
    const tapped = (answer: string) =>
      offerPhrases(all, {
        ...{ ...here, cause: 'flip', values: phraseValues(facts), readings: [] },
        observations: [{ key: 'lead-wrist-cupped', answer }],
      }).filter(({ phrase }) => phrase.seen?.key === 'lead-wrist-cupped');
    expect(tapped('yes').map(({ phrase }) => phrase.kind)).toEqual(['shows']);
    expect(tapped('no').map(({ phrase }) => phrase.kind)).toEqual(['praise']);
    expect(tapped('cannot-tell').map(({ phrase }) => phrase.kind)).toEqual(['shows']);
  });

  it('says neither of two opposite things of what was not measured', () => {
    const all = phrases.map(savedPhrase);
    const said = (readings: readonly { key: string; probabilityBelow: number; probabilityAbove: number }[]) =>
      offerPhrases(all, {
        ...{ ...here, view: 'down-the-line', cause: 'alignment', values: phraseValues(facts) },
        readings: readings.map((one) => ({ ...one, band: { low: -3, high: 3 } })),
      })
        .filter(({ phrase }) => phrase.kind === 'shows')
        .map(({ text }) => text);
    expect(said([])).toEqual([expect.stringContaining('feet or your shoulders')]);
    const key = 'toe-line-to-target-stick';
    expect(said([{ key, probabilityBelow: 0, probabilityAbove: 0.9 }])[0]).toContain(
      'to the {lead} of the line',
    );
    expect(said([{ key, probabilityBelow: 0.9, probabilityAbove: 0 }])[0]).toContain(
      'to the {trail} of the line',
    );
  });

  it('praises a measurement well within its band, and none without a band', () => {
    const all = phrases.map(savedPhrase);
    const key = 'hip-shift-address-top';
    const praised = (probabilityBelow: number, band: unknown) =>
      offerPhrases(all, {
        ...{ ...here, cause: null, values: phraseValues(facts) },
        readings: [{ key, probabilityBelow, probabilityAbove: 0.05, band }],
      }).some(({ phrase }) => phrase.when?.key === key && phrase.kind === 'praise');
    expect(praised(0.1, { low: -30, high: 30 })).toBe(true);
    expect(praised(0.5, { low: -30, high: 30 })).toBe(false);
    expect(praised(0, null)).toBe(false);
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

  it('takes a figure with its doubt, its side and its band along', () => {
    const told = { key: 'ball-inside-lead-heel', unit: 'mm', value: 41, u: 12, band: { low: 80, high: 130 } };
    const values = phraseValues({ ...facts, readings: [told] });
    const said =
      'It lies 4 cm (give or take 1 cm) inside your right heel. Between 8 cm and 13 cm is usual; here between 8 cm and 13 cm inside your right heel is sound.';
    const template = templateOf(said, values, 'left');
    expect(template).toContain('It lies {doubted:ball-inside-lead-heel} {way:ball-inside-lead-heel}.');
    expect(template).toContain('here {band:ball-inside-lead-heel} is sound.');
    const next = phraseValues({ ...facts, readings: [{ ...told, value: -21 }] });
    expect(fillPhrase(template, next)).toContain('2 cm (give or take 1 cm) outside your {lead} heel');
  });
});
