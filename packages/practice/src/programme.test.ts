import { causes } from '@ballfirst/library/causes';
import { everyDrill } from '@ballfirst/library/cautions';
import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { drillById, drills } from '@ballfirst/library/drills';
import { places } from '@ballfirst/library/types';
import { describe, expect, it } from 'vitest';
import { benefitOf } from './benefit.ts';
import { whyNot } from './drill-fit.ts';
import type { Means } from './means.ts';
import { chooseProgramme, type LikelyCause } from './programme.ts';

const library = { causes, drills };
const everything = Object.keys(equipment) as EquipmentId[];
const means: Means = { place: 'grass', daysPerWeek: 3, minutes: 20, pains: [], ageGroup: 'adult' };
const hangBack: LikelyCause = { id: 'hang-back', probability: 0.8, weight: 3 };
const handle: LikelyCause = { id: 'handle-back', probability: 0.5, weight: 3 };

describe('chooseProgramme', () => {
  it('gives one drill for the first cause and one that supports it, the rest is left out with a reason', () => {
    const dip: LikelyCause = { id: 'dip', probability: 0.6, weight: 2 };
    const choice = chooseProgramme({ rankedCauses: [hangBack, handle, dip], means, library });
    if (choice.drillId === null) throw new Error('a drill was expected');
    expect(choice).toMatchObject({
      drillId: 'lead-side-start',
      causeId: 'hang-back',
      exaggeration: 'mild',
      place: 'grass',
      minutes: 10,
      second: { drillId: 'line-brush', minutes: 10 },
      daysPerWeek: 3,
      weeklyMinutes: 60,
    });
    expect(choice.ladder.map((rung) => rung.id)).toContain('full');
    expect(choice.leftOut).toContainEqual({
      what: 'Dip: the body drops into the ball',
      why: 'One movement at a time.',
    });
    expect(choice.leftOut.some(({ what }) => what === 'Ball fence')).toBe(true);
  });
  it('gives the whole time to one drill where there is time for no more', () => {
    const choice = chooseProgramme({ rankedCauses: [hangBack], means: { ...means, minutes: 15 }, library });
    expect(choice).toMatchObject({
      drillId: 'lead-side-start',
      minutes: 15,
      second: null,
      weeklyMinutes: 45,
    });
  });
  it('carries the cautions of every drill it gives, and gives none without', () => {
    for (const { id, brings } of causes) {
      const weight = Math.max(...Object.values(brings));
      for (const place of places) {
        const choice = chooseProgramme({
          rankedCauses: [{ id, probability: 0.8, weight }, handle],
          means: { ...means, place, equipment: everything },
          library,
        });
        if (choice.drillId === null) throw new Error(`${id} at ${place}: a drill was expected`);
        expect(choice.cautions).toEqual(expect.arrayContaining([...everyDrill]));
        for (const given of [choice.drillId, choice.second?.drillId]) {
          if (given !== undefined) {
            expect(choice.cautions).toEqual(expect.arrayContaining([...drillById(given).cautions]));
          }
        }
      }
    }
    const bare = { causes, drills: drills.map((drill) => ({ ...drill, cautions: [] })) };
    const none = chooseProgramme({ rankedCauses: [hangBack], means, library: bare });
    expect(none.drillId).toBeNull();
    expect(none.leftOut[0]?.why).toBe('Has no cautions yet.');
  });
  it('strikes no ball where there are none, and no more than there are', () => {
    const none = chooseProgramme({ rankedCauses: [hangBack], means: { ...means, balls: 0 }, library });
    if (none.drillId === null) throw new Error('a drill was expected');
    expect(none.ladder.every((rung) => !rung.ball)).toBe(true);
    expect(none.ballsAtMost).toBe(0);
    expect(none.leftOut).toContainEqual({ what: 'The swings with a ball', why: 'No balls at hand.' });
    expect(
      chooseProgramme({ rankedCauses: [hangBack], means: { ...means, balls: 20 }, library }),
    ).toMatchObject({
      ballsAtMost: 20,
    });
  });
  it('promises the most of all doses that fit, by looking through every one', () => {
    const likely = [hangBack, handle];
    const ids = [
      ...new Set(likely.flatMap(({ id }) => causes.find((cause) => cause.id === id)?.drills ?? [])),
    ];
    for (const minutes of [10, 15, 20, 25, 30]) {
      const choice = chooseProgramme({ rankedCauses: likely, means: { ...means, minutes }, library });
      if (choice.drillId === null) throw new Error('a drill was expected');
      const doses = [choice, ...(choice.second === null ? [] : [choice.second])];
      const chosen = benefitOf(doses, likely, causes);
      expect(doses.reduce((sum, dose) => sum + dose.minutes, 0)).toBeLessThanOrEqual(minutes);
      for (const first of causes.find(({ id }) => id === 'hang-back')?.drills ?? []) {
        for (const second of ids) {
          if (
            second === first ||
            !(second === 'set-up-photo' || drillById(second).causes.includes('hang-back'))
          )
            continue;
          for (const [a, b] of [
            [minutes, 0],
            [10, minutes - 10],
            [minutes - 10, 10],
          ] as const) {
            const fits = [
              [first, a],
              [second, b],
            ] as const;
            if (
              fits.some(([id, dose]) => dose > Math.max(10, drillById(id).minutes) || (dose > 0 && dose < 10))
            )
              continue;
            if (fits.some(([id]) => whyNot(drillById(id), means) !== null)) continue;
            const other = benefitOf(
              fits.map(([drillId, dose]) => ({ drillId, minutes: dose })),
              likely,
              causes,
            );
            expect(other).toBeLessThanOrEqual(chosen + 1e-9);
          }
        }
      }
    }
  });
  it('leaves a drill out that a pain forbids', () => {
    const sore: Means = { ...means, pains: ['knee-pain'] };
    const choice = chooseProgramme({ rankedCauses: [hangBack], means: sore, library });
    expect(choice.drillId).toBe('line-brush');
    expect(choice.leftOut).toContainEqual({ what: 'Front-foot start', why: 'Not with knee pain.' });
  });
  it('prescribes nothing when every drill is forbidden', () => {
    const sore: Means = { ...means, pains: ['knee-pain', 'wrist-pain'], minutes: 15 };
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
