import type { Reply } from '@ballfirst/contracts/client';
import { causeById } from '@ballfirst/library/causes';
import { expect, it } from 'vitest';
import type { Mark } from '../_marking/marking.ts';
import { chooseFrames } from './choose-frames.ts';
import { firstWords } from './first-words.ts';
import { momentOfCause } from './moment-of-cause.ts';
import { drillsFor, emptyReply, fillFor, missingOf, planFor } from './reply-form.ts';

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
const marking = { clipId: 'c', marks: [mark('address', 3), mark('top', 40)] };

it('finds the moment at which a cause shows among those that were marked', () => {
  expect(momentOfCause(causeById('sway-away'), ['address', 'top'])).toBe('top');
  expect(momentOfCause(causeById('thrown-early'), ['address', 'top'])).toBe('address');
  expect(momentOfCause(null, ['top'])).toBe('address');
});

it('chooses address and that moment, in words for this hand', () => {
  expect(chooseFrames(marking, causeById('sway-away'), 'right')).toEqual([
    { clipId: 'c', frame: 3, position: 'address', caption: 'Before you swing' },
    { clipId: 'c', frame: 40, position: 'top', caption: 'At the top' },
  ]);
});

it('begins with what happened, and says left and right for this player', () => {
  const words = firstWords({ submission, fault: 'fat', drill });
  expect(words).toContain('Nora, in 6 of your 10 balls the club met the ground before the ball.');
  expect(words).toContain('over the right foot');
  expect(words.split(/\s+/).length).toBeLessThanOrEqual(120);
});

it('fills a reply for a cause and keeps what the coach wrote', () => {
  const given = { submission, fault: 'fat' as const, drills: [drill], marking };
  const filled = fillFor(emptyReply, 'sway-away', '', given);
  expect(filled).toMatchObject({ cause: 'sway-away', plan: planFor(drill) });
  expect(filled.frames).toHaveLength(2);
  expect(fillFor({ ...filled, words: 'My own.' }, 'sway-away', filled.words, given).words).toBe('My own.');
  expect(drillsFor('no-such', [drill])).toEqual([]);
});

it('says what is missing before sending', () => {
  expect(missingOf(emptyReply)).toBe('nothing');
  expect(missingOf({ ...emptyReply, words: 'x', plan: planFor(drill) })).toBe('cause');
  expect(missingOf({ ...emptyReply, words: 'x' })).toBeNull();
});
