import { isMeasurementKey } from '@ballfirst/swing/definitions/measurement-names';
import { describe, expect, it } from 'vitest';
import { arcClearanceMm } from '../arc-clearance.ts';
import { arcHeightBehindMm } from '../arc-height.ts';
import { bands } from '../bands.ts';
import { causeById, causes } from '../causes.ts';
import { ballDiameterMm } from '../constants.ts';
import { drillById, drills } from '../drills.ts';
import { observationsFor } from '../observations-for.ts';
import type { Phrase } from '../phrases/phrase.ts';
import { type Cause, type Drill, faults, type Station, type StationObject } from '../types.ts';
import { builtIn, checkLibrary } from './check.ts';
import { unseenIn } from './unseen-in.ts';

const problemsWith = (change: (drill: Drill) => Partial<Drill>, id = 'line-brush'): readonly string[] =>
  checkLibrary({
    ...builtIn,
    drills: drills.map((drill) => (drill.id === id ? { ...drill, ...change(drill) } : drill)),
  }).map(({ problem }) => problem);

const problemsWithStation = (change: Partial<Station>): readonly string[] =>
  problemsWith(({ stations }) => ({
    stations: stations.map((station) => (station.place === 'grass' ? { ...station, ...change } : station)),
  }));

const problemsWithCause = (change: Partial<Cause>): readonly string[] =>
  checkLibrary({
    ...builtIn,
    causes: causes.map((cause) => (cause.id === 'sway-away' ? { ...cause, ...change } : cause)),
  }).map(({ problem }) => problem);

const stick = (xMm: number, yMm: number, rotationDeg = 0): StationObject => ({
  what: 'stick',
  xMm,
  yMm,
  lengthMm: 1000,
  widthMm: 10,
  rotationDeg,
  label: 'stick',
});

describe('the built-in library', () => {
  it('has nothing wrong with it', () => {
    expect(checkLibrary()).toEqual([]);
  });
  it.each(['handle-back', 'hips-back-at-address', 'sway-away', 'hang-back', 'thrown-early'])(
    '%s has two signs and two drills at least',
    (id) => {
      const cause = causeById(id);
      expect(cause.brings.fat).toBe(3);
      expect(cause.signs.length).toBeGreaterThanOrEqual(2);
      expect(cause.drills.length).toBeGreaterThanOrEqual(2);
      for (const drill of cause.drills) expect(drillById(drill).id).toBe(drill);
    },
  );
  it('has every cause, each with two drills, or one and a check', () => {
    expect(causes.length).toBe(38);
    for (const { id, drills: asked, check } of causes) {
      expect([id, asked.length >= 2 || (asked.length === 1 && check !== undefined)]).toEqual([id, true]);
    }
  });
  it('gives every fault a leading cause that its own view can show', () => {
    for (const fault of faults) {
      const heaviest = Math.max(...causes.map(({ brings }) => brings[fault] ?? 0));
      const leading = causes.filter(({ brings }) => brings[fault] === heaviest);
      expect([fault, leading.some(({ signs }) => signs.length > 0)]).toEqual([fault, true]);
    }
  });
  it('keeps the fence away from a sound swing at all three distances, and juniors and seniors off the closest', () => {
    const levels = drillById('ball-fence').exaggerations;
    expect(levels.map(({ obstacle }) => obstacle?.behindMm)).toEqual([345, 303, 260]);
    expect(levels[2]?.notFor).toEqual(['junior', 'senior']);
    for (const { obstacle } of levels) {
      expect(arcHeightBehindMm(obstacle?.behindMm ?? 0)).toBeGreaterThan(ballDiameterMm);
    }
  });
  it('says of a cause what a view cannot show', () => {
    expect(unseenIn(causeById('out-to-in'), 'face-on')).toMatch(/from behind/);
    expect(unseenIn(causeById('out-to-in'), 'down-the-line')).toBeNull();
    expect(unseenIn(causeById('grip-tension'), 'face-on')).toMatch(/ask/);
  });
  it('asks for six taps at most, the same for the same miss', () => {
    for (const fault of faults) {
      for (const view of ['face-on', 'down-the-line'] as const) {
        const keys = observationsFor(fault, view).map(({ key }) => key);
        expect(keys.length).toBeLessThanOrEqual(6);
        expect(new Set(keys).size).toBe(keys.length);
      }
    }
    expect(observationsFor('fat', 'face-on').map(({ key }) => key)).toContain('clubhead-in-line-early');
  });
  it('still reads a programme that was given under a former name', () => {
    expect(drillById('past-the-line').id).toBe('past-the-stick');
  });
  it('reads only what can be measured', () => {
    const keys = [
      ...bands.map((band) => band.key),
      ...causes.flatMap((cause) =>
        cause.signs.filter((sign) => sign.kind === 'measured').map((sign) => sign.key),
      ),
    ];
    expect(keys.filter((key) => !isMeasurementKey(key))).toEqual([]);
  });
  it('holds no ids a student could not read', () => {
    for (const { id } of [...causes, ...drills]) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });
  it('refuses unknown ids', () => {
    expect(() => causeById('nothing')).toThrow(RangeError);
    expect(() => drillById('nothing')).toThrow(RangeError);
  });
});

describe('a broken copy is refused', () => {
  it.each<[string, Partial<Drill>, RegExp]>([
    ['no cautions', { cautions: [] }, /no cautions/],
    ['no sentence about pain', { cautions: ['Take care.'] }, /about pain/],
    ['an unknown cause', { causes: ['bad-luck'] }, /unknown cause/],
    ['no ladder', { ladder: [] }, /no ladder/],
    ['no mat station', { stations: [] }, /no station for mat/],
    ['too many balls', { ballsAtMost: 200 }, /more than 90/],
    ['words of coaches', { feel: 'Weight on the lead foot.' }, /lead or trail/],
    ['no over-correction', { overCorrection: ' ' }, /over-correction/],
    ['a caution nobody wrote', { cautions: ['Take care.'] }, /unknown caution/],
    ['a moment by number', { purpose: 'Stops at P6.' }, /a code/],
    ['initials', { purpose: 'Moves the COM.' }, /a code/],
    ['an id', { purpose: 'Mends hang-back.' }, /a code/],
    ['a cue about the body', { feel: 'Your hips go first.' }, /cue about the body/],
    ['no exaggeration', { exaggerations: [] }, /no exaggeration/],
    ['no cause', { causes: [] }, /mends no cause/],
    [
      'a fence too close',
      {
        exaggerations: [
          { level: 'strong', how: 'x', setting: 'x', obstacle: { behindMm: 220, heightMm: 43 } },
        ],
      },
      /sound swing would touch/,
    ],
  ])('%s', (_, change, problem) => {
    expect(problemsWith(() => change).join()).toMatch(problem);
  });
  it('a rung without "clean", or out of order', () => {
    expect(
      problemsWith(({ ladder }) => ({ ladder: ladder.map((rung) => ({ ...rung, clean: '' })) })).join(),
    ).toMatch(/what "clean" is/);
    expect(problemsWith(({ ladder }) => ({ ladder: ladder.toReversed() })).join()).toMatch(/out of order/);
  });
  it('a station without steps, with unknown things, with hard things in the way', () => {
    expect(problemsWithStation({ steps: [] }).join()).toMatch(/no steps/);
    expect(problemsWithStation({ needs: ['trebuchet'] }).join()).toMatch(/unknown equipment/);
    expect(problemsWithStation({ objects: [stick(-600, 100)] }).join()).toMatch(/within 30 cm/);
    expect(problemsWithStation({ objects: [{ ...stick(-300, 0), what: 'ball' }] }).join()).toMatch(
      /hard ball/,
    );
    expect(problemsWithStation({ objects: [{ ...stick(-300, 0), what: 'towel' }] }).join()).toMatch(/towel/);
    const closeFence = { ...stick(-220, 0), what: 'soft-ball' as const, lengthMm: 43, widthMm: 43 };
    expect(problemsWithStation({ objects: [closeFence] }).join()).toMatch(/sound swing/);
    const post = { ...stick(-200, -100), what: 'cushion' as const, lengthMm: 50, heightMm: 900 };
    expect(problemsWithStation({ objects: [post] }).join()).toMatch(/upright/);
  });
  it('a cause that leads nowhere, to itself or to no drill', () => {
    expect(problemsWithCause({ leadsTo: { 'bad-luck': 0.5 } }).join()).toMatch(/unknown cause/);
    expect(problemsWithCause({ drills: ['dig-a-hole'] }).join()).toMatch(/unknown drill/);
    expect(problemsWithCause({ signs: [] }).join()).toMatch(/no signs/);
    const { signs } = causeById('sway-away');
    expect(problemsWithCause({ signs: [...signs, ...signs.slice(0, 1)] }).join()).toMatch(/two signs of one/);
    expect(problemsWithCause({ unseen: {} }).join()).toMatch(/no sign down-the-line/);
    expect(problemsWithCause({ drills: ['line-brush'] }).join()).toMatch(/fewer than two/);
    expect(problemsWithCause({ drills: ['line-brush', 'line-brush'] }).join()).toMatch(/twice/);
    expect(
      checkLibrary({ ...builtIn, causes: causes.filter(({ id }) => id !== 'tee-too-high') }).map(
        ({ problem }) => problem,
      ),
    ).toEqual(expect.arrayContaining(['is no sign of any cause', 'is asked for by no cause']));
    expect(
      checkLibrary({
        ...builtIn,
        causes: causes.map((cause) =>
          cause.id === 'flip' ? { ...cause, leadsTo: { 'hang-back': 0.1 } } : cause,
        ),
      }).map(({ problem }) => problem),
    ).toContain('"hang-back" leads back to itself');
  });
});

describe('phrases', () => {
  const problemsWithPhrase = (id: string, change: Partial<Phrase>): string =>
    checkLibrary({
      ...builtIn,
      phrases: builtIn.phrases.map((phrase) => (phrase.id === id ? { ...phrase, ...change } : phrase)),
    })
      .map(({ problem }) => problem)
      .join();
  const without = (gone: (phrase: Phrase) => boolean): string =>
    checkLibrary({ ...builtIn, phrases: builtIn.phrases.filter((phrase) => !gone(phrase)) })
      .map(({ problem }) => problem)
      .join();
  it.each([
    ['At P6 it shows.', /a code/],
    ['It is hang-back.', /a code/],
    ['Your lead foot.', /lead or trail/],
    ['A strained back.', /injury/],
    ['It hurts your wrist.', /injury/],
    ['Hello {nobody}.', /unknown \{nobody\}/],
    ['It is [[{measured:tempo-ratio}]].', /does not rest on/],
    ['It is {doubted:hip-shift-address-top}.', /without its figure/],
    ['A [[bracket.', /bracket too many/],
    [' ', /no words/],
  ])('%s is refused', (text, problem) => {
    expect(problemsWithPhrase('sway-away-shows-1', { text })).toMatch(problem);
  });
  it('stand for every cause: what is shown, why, what to try unseen, what is good', () => {
    const of = (kind: Phrase['kind']) => (phrase: Phrase) =>
      phrase.kind === kind && phrase.causes?.includes('hang-back') === true;
    expect(without(of('shows'))).toMatch(/no phrase for what is seen face-on/);
    expect(without(of('why'))).toMatch(/no phrase for why it makes "fat"/);
    expect(without(of('unseen'))).toMatch(/no phrase for what to try unseen down-the-line/);
    expect(without(of('praise'))).toMatch(/no praise that rests on something/);
    const { id = '' } = builtIn.phrases.find(of('unseen')) ?? {};
    expect(problemsWithPhrase(id, { text: 'It is {measured:hip-shift-address-impact}.' })).toMatch(
      /not made/,
    );
  });
});

describe('arcClearanceMm', () => {
  it('is nothing where the club passes', () => {
    expect(arcClearanceMm(stick(0, 0))).toBeCloseTo(0, 6);
  });
  it('is the distance beyond the ball', () => {
    expect(arcClearanceMm(stick(0, 350))).toBeCloseTo(345, 0);
  });
  it('counts the height of the club above what lies between the feet', () => {
    expect(arcClearanceMm(stick(0, -900, 90))).toBeGreaterThan(300);
  });
});
