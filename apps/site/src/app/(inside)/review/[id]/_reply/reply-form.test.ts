import type { Reply } from '@ballfirst/contracts/client';
import { causeById } from '@ballfirst/library/causes';
import { phrases } from '@ballfirst/library/phrases';
import { savedPhrase } from '@ballfirst/practice/saved-phrase';
import { expect, it } from 'vitest';
import type { Mark } from '../_marking/marking.ts';
import { chooseFrames } from './choose-frames.ts';
import { firstWords } from './first-words.ts';
import { insertAt } from './insert-at.ts';
import { momentsOfCause } from './moment-of-cause.ts';
import { phrasesHere, refilled } from './phrase-help.ts';
import { type Draft, drillsFor, emptyReply, fillFor, missingOf, planFor, redosed } from './reply-form.ts';
import { formOf, sameForm } from './same-form.ts';

const tally = {
  balls: 10,
  solid: 3,
  fat: 6,
  thin: 1,
  topped: 0,
  heel: 0,
  toe: 0,
  shank: 0,
  sky: 0,
  counted: true,
};
const submission = {
  club: '8-iron',
  student: { name: 'Nora Winter', hand: 'left' },
  tally,
} as unknown as Reply<'readSubmission'>;
const drill = {
  id: 'past-the-stick',
  name: 'Past the stick',
  purpose: 'Takes the hips over the lead foot.',
  causes: ['sway-away'],
  places: ['grass', 'mat'],
  minutes: 15,
  cautions: ['x'],
};
const mark = (position: Mark['position'], frame: number): Mark => ({
  position,
  point: 'hip-middle',
  frame,
  x: 1,
  y: 1,
  source: 'coach',
});
const reading = {
  ...{ key: 'hip-shift-address-top', name: 'Hips', unit: 'mm' as const, value: -61, u: 9, proxy: false },
  ...{ band: { low: -30, high: 30, label: 'common practice' as const } },
  ...{ probabilityBelow: 0.95, probabilityAbove: 0 },
};
const help = {
  ...{ submission, units: 'metric' as const, fault: 'fat' as const, readings: [reading], fatRisk: null },
  ...{ view: 'face-on' as const, observations: [], phrases: phrases.map(savedPhrase) },
};
const marking = { clipId: 'c', marks: [mark('address', 3), mark('top', 40)] };

it('finds the moment at which a cause shows among those that were marked', () => {
  expect(momentsOfCause(causeById('sway-away'), ['address', 'top'])).toEqual(['top']);
  expect(momentsOfCause(causeById('thrown-early'), ['address', 'top'])).toEqual(['address']);
  expect(momentsOfCause(causeById('hang-back'), ['impact', 'lead-arm-parallel-down'])).toEqual([
    ...['lead-arm-parallel-down', 'impact'],
  ]);
  expect(momentsOfCause(null, ['top'])).toEqual(['address']);
});

it('chooses address and that moment, in words for this hand', () => {
  expect(chooseFrames(marking, causeById('sway-away'), 'right')).toEqual([
    { clipId: 'c', frame: 3, position: 'address', caption: 'Before you swing' },
    { clipId: 'c', frame: 40, position: 'top', caption: 'At the top' },
  ]);
});

it('begins with what happened, and says left and right for this player', () => {
  const words = firstWords({ submission, fault: 'fat', drill, cause: 'sway-away', phrases: help });
  expect(words).toContain('Nora, in 6 of your 10 balls the club met the ground before the ball.');
  expect(words).toContain('over the right foot');
  expect(words).toContain('your hips drift 6 cm (give or take 1 cm) away from the target');
  expect(words.split(/\s+/).length).toBeLessThanOrEqual(120);
});

it('fills a reply for a cause and keeps what the coach wrote', () => {
  const offer = { plan: { ...planFor(drill), place: 'mat' as const, daysPerWeek: 2 } };
  const given = { submission, fault: 'fat' as const, drills: [drill], marking, offer, phrases: help };
  const filled = fillFor(emptyReply, 'sway-away', '', given);
  expect(filled).toMatchObject({ cause: 'sway-away', plan: offer.plan });
  expect(fillFor(emptyReply, 'sway-away', '', { ...given, offer: null }).plan).toEqual(planFor(drill));
  expect(fillFor(emptyReply, 'sway-away', '', { ...given, offer: { plan: null } }).plan).toBeNull();
  expect(filled.frames).toHaveLength(2);
  expect(fillFor({ ...filled, words: 'My own.' }, 'sway-away', filled.words, given).words).toBe('My own.');
  expect(drillsFor('no-such', [drill])).toEqual([]);
});

it('takes a film out when another cause is chosen, and knows a stored draft by its film and voice', () => {
  const given = { submission, fault: 'fat' as const, drills: [drill], marking, offer: null, phrases: help };
  const form = { ...emptyReply, cause: 'sway-away', teachingClip: 'sway-away', withTalk: false };
  expect(fillFor(form, 'sway-away', '', given)).toMatchObject({ teachingClip: 'sway-away', withTalk: false });
  expect(fillFor(form, 'hang-back', '', given).teachingClip).toBeNull();
  const film = { cause: 'sway-away', title: 'Stay', url: 'https://films.example/stay', words: '' };
  const stored = { ...form, teachingClip: film, moreAgreedAt: null } as unknown as Draft;
  expect(formOf(stored)).toMatchObject({ teachingClip: 'sway-away', withTalk: false });
  expect(sameForm(form, stored)).toBe(true);
  expect(sameForm({ ...form, teachingClip: null }, stored)).toBe(false);
  expect(sameForm({ ...form, withTalk: true }, stored)).toBe(false);
});

it('says what is missing before sending', () => {
  expect(missingOf(emptyReply)).toBe('nothing');
  expect(missingOf({ ...emptyReply, words: 'x', plan: planFor(drill) })).toBe('cause');
  expect(missingOf({ ...emptyReply, words: 'x' })).toBeNull();
});

it('keeps the offered days and place when another drill is taken, and counts the week anew', () => {
  const offered = { ...planFor(drill), place: 'mat' as const, daysPerWeek: 2, exaggeration: 'mild' as const };
  expect(planFor(drill, offered)).toMatchObject({ place: 'mat', daysPerWeek: 2, weeklyMinutes: 30 });
  const second = { drillId: 'line-brush', minutes: 10 };
  expect(redosed({ ...offered, second }, { days: 3 }).weeklyMinutes).toBe(75);
  expect(redosed({ ...offered, second }, { second: null })).toMatchObject({
    second: null,
    weeklyMinutes: 30,
  });
  expect(redosed(offered, { minutes: 240, days: 7 }).weeklyMinutes).toBe(600);
});

it('offers phrases filled for this player, and fills a kept reply again', () => {
  const here = { cause: 'sway-away', drillName: 'Past the stick' };
  expect(phrasesHere(help, here)[0]?.text).toContain('your hips drift 6 cm (give or take 1 cm) away');
  const texts = phrasesHere(help, here).map(({ text }) => text);
  expect(texts.join(' ')).toContain('between 3 cm away from the target and 3 cm towards the target is sound');
  expect(texts.join(' ')).not.toMatch(/[{}[\]]/);
  const behind = phrasesHere({ ...help, readings: [], view: 'down-the-line' }, here);
  expect(behind[0]?.phrase.kind).toBe('unseen');
  expect(behind.map(({ phrase }) => phrase.kind)).not.toContain('praise');
  const none = { ...help, readings: [] };
  expect(phrasesHere(none, here)[0]?.text).toContain('your hips drift away');
  const kept = '{player}, be on your {lead} foot. It was {measured:head-shift-address-top}. Go to “{drill}”.';
  expect(refilled(help, here, kept)).toBe('Nora, be on your right foot. Go to “Past the stick”.');
});

it('puts a phrase where the cursor stands', () => {
  expect(insertAt('One. Three.', 'Two.', 4, 5)).toEqual({ words: 'One. Two. Three.', cursor: 9 });
  expect(insertAt('', 'Two.', 0, 0)).toEqual({ words: 'Two.', cursor: 4 });
});
