import { causes } from '@ballfirst/library/causes';
import { drills } from '@ballfirst/library/drills';
import { places } from '@ballfirst/library/types';
import { describe, expect, it } from 'vitest';
import type { Means } from './means.ts';
import { chooseProgramme, type LikelyCause } from './programme.ts';

const library = { causes, drills };
const means: Means = { place: 'grass', daysPerWeek: 3, minutes: 20, pains: [], ageGroup: 'adult' };
const hangBack: LikelyCause = { id: 'hang-back', probability: 0.8, weight: 3 };
const handle: LikelyCause = { id: 'handle-back', probability: 0.5, weight: 3 };

describe('chooseProgramme', () => {
  it('gives one drill for the first cause, the rest is left out with a reason', () => {
    const choice = chooseProgramme({ rankedCauses: [hangBack, handle], means, library });
    if (choice.drillId === null) throw new Error('a drill was expected');
    expect(choice).toMatchObject({
      drillId: 'lead-side-start',
      causeId: 'hang-back',
      exaggeration: 'mild',
      place: 'grass',
      minutes: 15,
      daysPerWeek: 3,
      weeklyMinutes: 45,
    });
    expect(choice.ladder.map((rung) => rung.id)).toContain('full');
    expect(choice.leftOut).toContainEqual({
      what: 'Handle too far back at address',
      why: 'One movement at a time.',
    });
    expect(choice.leftOut.some(({ what }) => what === 'Ball fence')).toBe(true);
  });
  it('leaves a drill out that a pain forbids', () => {
    const sore: Means = { ...means, pains: ['knee-pain'] };
    const choice = chooseProgramme({ rankedCauses: [hangBack], means: sore, library });
    expect(choice.drillId).toBe('line-brush');
    expect(choice.leftOut).toContainEqual({ what: 'Front-foot start', why: 'Not with knee pain.' });
  });
  it('prescribes nothing when every drill is forbidden', () => {
    const sore: Means = { ...means, pains: ['knee-pain', 'wrist-pain'] };
    const choice = chooseProgramme({ rankedCauses: [hangBack], means: sore, library });
    expect(choice.drillId).toBeNull();
    expect(choice.leftOut.length).toBeGreaterThanOrEqual(3);
  });
  it('takes a drill the student has the things for', () => {
    const thrown: LikelyCause = { id: 'thrown-early', probability: 0.7, weight: 3 };
    expect(chooseProgramme({ rankedCauses: [thrown], means, library }).drillId).toBe('pump');
    const noPhone: Means = { ...means, equipment: ['club', 'balls', 'towel'] };
    expect(chooseProgramme({ rankedCauses: [thrown], means: noPhone, library }).drillId).toBe('flat-towel');
    const withBalls: Means = { ...means, equipment: ['club', 'balls', 'soft-balls'] };
    expect(chooseProgramme({ rankedCauses: [thrown], means: withBalls, library }).drillId).toBe('ball-fence');
  });
  it('goes no further than is sound on a mat or at home', () => {
    const onMat = chooseProgramme({ rankedCauses: [hangBack], means: { ...means, place: 'mat' }, library });
    if (onMat.drillId === null) throw new Error('a drill was expected');
    expect(onMat.ladder.at(-1)?.id).toBe('hip-high');
    expect(onMat.ballsAtMost).toBe(30);
    const athome = chooseProgramme({ rankedCauses: [hangBack], means: { ...means, place: 'home' }, library });
    if (athome.drillId === null) throw new Error('a drill was expected');
    expect(athome.ladder.every((rung) => !rung.ball)).toBe(true);
  });
  it('keeps juniors milder', () => {
    const asked = { rankedCauses: [hangBack], library, exaggeration: 'strong' as const };
    expect(chooseProgramme({ ...asked, means })).toMatchObject({ exaggeration: 'strong' });
    const junior = chooseProgramme({ ...asked, means: { ...means, ageGroup: 'junior' } });
    expect(junior).toMatchObject({ exaggeration: 'firm' });
  });
  it('leaves days to rest', () => {
    const eager = chooseProgramme({ rankedCauses: [hangBack], means: { ...means, daysPerWeek: 7 }, library });
    expect(eager).toMatchObject({ daysPerWeek: 4 });
  });
  it('finds a sound programme for each of the five first causes at each place', () => {
    for (const id of ['handle-back', 'hips-back-at-address', 'sway-away', 'hang-back', 'thrown-early']) {
      for (const place of places) {
        const rankedCauses = [{ id, probability: 0.6, weight: 3 }];
        const choice = chooseProgramme({ rankedCauses, means: { ...means, place, minutes: 10 }, library });
        expect([id, place, choice.drillId !== null]).toEqual([id, place, true]);
      }
    }
  });
  it('refuses a question without a cause or a day', () => {
    expect(() => chooseProgramme({ rankedCauses: [], means, library })).toThrow(RangeError);
    const unknown = [{ id: 'luck', probability: 1, weight: 3 }];
    expect(() => chooseProgramme({ rankedCauses: unknown, means, library })).toThrow(RangeError);
    const noDay = { ...means, daysPerWeek: 0 };
    expect(() => chooseProgramme({ rankedCauses: [hangBack], means: noDay, library })).toThrow(RangeError);
  });
});
