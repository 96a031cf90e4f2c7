import * as words from '@ballfirst/contracts/words';
import { faults, outcomes, rungs } from '@ballfirst/library/types';
import { type TestDatabase, testDatabase } from '@ballfirst/testing/test-database';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { withCatalog } from './catalog/client.ts';
import { wordsOfCheck } from './catalog/words-of-check.ts';

// The database's closed lists against the words of the code: a word added on one side only fails here.
let test: TestDatabase;
beforeAll(async () => {
  test = await testDatabase();
});
afterAll(() => test.close());

const exaggerations = ['mild', 'firm', 'strong'];
const faultsAndOutcomes = [...new Set<string>([...faults, ...outcomes])];

const lists: readonly (readonly [table: string, constraint: string, code: readonly string[]])[] = [
  ['membership', 'membership_role', words.Role.options],
  ['student', 'student_hand', words.Hand.options],
  ['student', 'student_age_group', words.AgeGroup.options],
  ['student', 'student_place', words.Place.options],
  ['student', 'student_standing', words.Standing.options],
  ['standing_change', 'standing_change_from', words.Standing.options],
  ['standing_change', 'standing_change_to', words.Standing.options],
  ['submission', 'submission_status', words.SubmissionStatus.options],
  ['submission', 'submission_club', words.Club.options],
  ['submission', 'submission_lie', words.Lie.options],
  ['submission', 'submission_lead_fault', faultsAndOutcomes],
  ['submission', 'submission_start_line', words.StartLine.options],
  ['submission', 'submission_curve', words.Curve.options],
  ['submission', 'submission_typical', words.Typical.options],
  ['submission', 'submission_pain', words.Pain.options],
  ['clip', 'clip_view', words.FileView.options],
  ['clip', 'clip_swing_length', words.FileLength.options],
  ['clip', 'clip_status', words.ClipStatus.options],
  ['mark', 'mark_position', words.Position.options],
  ['mark', 'mark_point', words.Point.options],
  ['observation', 'observation_answer', words.Answer.options],
  ['diagnosis', 'diagnosis_fault', faults],
  ['diagnosis', 'diagnosis_set_up_ticks', words.SetUpTick.options],
  ['reply', 'reply_set_up_ticks', words.SetUpTick.options],
  ['programme', 'programme_exaggeration', exaggerations],
  ['programme', 'programme_place', words.Place.options],
  ['programme', 'programme_rung', rungs],
  ['programme', 'programme_status', words.ProgrammeStatus.options],
  ['practice_entry', 'practice_entry_rung', rungs],
  ['practice_entry', 'practice_entry_pain', words.Pain.options],
  ['practice_entry', 'practice_entry_verdict', words.Verdict.options],
];

describe('closed lists', () => {
  it.each(lists)('%s: %s holds the words of the code', async (table, constraint, code) => {
    const held = await withCatalog(test.superuserUrl, (catalog) => wordsOfCheck(catalog, table, constraint));
    expect(held).toEqual([...code].toSorted());
  });
});

describe('a tally', () => {
  const sound = { balls: 10, solid: 4, fat: 6, thin: 0, topped: 0, heel: 0, toe: 0, shank: 0, sky: 0 };
  it.each([
    [true, sound],
    [true, { ...sound, fat: 0 }],
    [false, { ...sound, fat: 7 }],
    [false, { ...sound, thin: -1 }],
    [false, { ...sound, thin: 0.5 }],
    [false, { ...sound, thin: '1' }],
    [false, { ...sound, balls: null }],
    [false, { balls: 10 }],
    [false, []],
    [false, null],
  ])('is %s for %j', async (expected, tally) => {
    const { rows } = await test.db.pool.query('SELECT is_sound_tally($1::jsonb) AS sound', [
      JSON.stringify(tally),
    ]);
    expect(rows[0]?.sound).toBe(expected);
  });
});
