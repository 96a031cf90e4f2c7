// Invented golfers, filmed and marked with error, against what is measured and diagnosed: coverage of the intervals, hit
// rate of the first cause against Bayes with the generator's own parameters, and how often a sound swing is blamed.
import { writeFileSync } from 'node:fs';
import { viewOfCause } from '@ballfirst/demo/golfer/draw-swing';
import { golferCauses, type PlantedCause } from '@ballfirst/demo/golfer/golfer-causes';
import { firstCause } from '@ballfirst/diagnosis/first-cause';
import { rank } from '@ballfirst/diagnosis/rank';
import { causeById, causes } from '@ballfirst/library/causes';
import { type FaultId, faults } from '@ballfirst/library/types';
import { firstPassFor } from '@ballfirst/swing/first-pass';
import { type View, views } from '@ballfirst/swing/marks';
import { coverageOf } from './diagnosis-parts/coverage.ts';
import { oracleOf } from './diagnosis-parts/oracle.ts';
import { type SeenSwing, seenSwing } from './diagnosis-parts/seen-swing.ts';

const quick = process.env.BENCH_QUICK === '1';
const soundAView = quick ? 200 : 2000;
const testedACause = quick ? 20 : 200;
const trainedACause = quick ? 40 : 150;

const many = <T>(count: number, of: (turn: number) => T): T[] =>
  Array.from({ length: count }, (_, turn) => of(turn));
const planted = golferCauses.filter((cause): cause is PlantedCause => cause !== 'none');

const sound = new Map<View, SeenSwing[]>(
  views.map((view, i) => [view, many(soundAView, (turn) => seenSwing(1_000_000 * (i + 1) + turn, view, []))]),
);
const drawn = (from: number, count: number) =>
  new Map(
    planted.map((cause, i) => [
      cause,
      many(count, (turn) => seenSwing(from + 1000 * i + turn, viewOfCause(cause), [cause])),
    ]),
  );
const tested = drawn(10_000_000, testedACause);
const training = drawn(20_000_000, trainedACause);

/** Planted causes that bring a fault about and have a sign in the view it is filmed from. */
const candidates = (fault: FaultId, view: View): PlantedCause[] =>
  planted.filter((id) => {
    const { brings, signs } = causeById(id);
    const seen = signs.some(
      (sign) => sign.kind === 'measured' && (sign.view === view || sign.view === 'either'),
    );
    return brings[fault] !== undefined && viewOfCause(id) === view && seen;
  });
const rankOf = (fault: FaultId, { readings }: SeenSwing) =>
  rank({ fault, readings, observations: [], causes });

let n = 0;
let hits = 0;
let inTwo = 0;
let oracleHits = 0;
for (const fault of faults) {
  const { view } = firstPassFor(fault, 'full');
  const able = candidates(fault, view);
  if (able.length < 2) continue;
  const oracle = oracleOf(new Map(able.map((cause) => [cause, training.get(cause) ?? []])));
  const rows = able.map((cause) => {
    const swings = tested.get(cause) ?? [];
    // Only causes that were looked for compete: no mark can speak for the others.
    const firsts = swings.map((swing) => rankOf(fault, swing).filter(({ factors }) => factors.length > 0));
    const hit = firsts.filter(([first]) => first?.causeId === cause).length;
    const two = firsts.filter((ranked) => ranked.slice(0, 2).some(({ causeId }) => causeId === cause)).length;
    const best = swings.filter((swing) => oracle(swing) === cause).length;
    n += swings.length;
    hits += hit;
    inTwo += two;
    oracleHits += best;
    return {
      cause,
      first: hit / swings.length,
      'first two': two / swings.length,
      oracle: best / swings.length,
    };
  });
  console.log(`${fault}, ${view}`);
  console.table(rows);
}

/** Each sound swing is read for one of the faults filmed from its view, in turn. */
const soundReadings = [...sound].flatMap(([view, swings]) => {
  const filmed = faults.filter((fault) => firstPassFor(fault, 'full').view === view);
  return swings.map((swing, turn) => ({ swing, fault: filmed[turn % filmed.length] ?? 'fat' }));
});
const blamed = soundReadings.filter(({ swing, fault }) => firstCause(rankOf(fault, swing)) !== null).length;
const fromTheFront = sound.get('face-on') ?? [];
const blamedForFat = fromTheFront.filter((swing) => firstCause(rankOf('fat', swing)) !== null).length;

const coverage = [...sound.values()].flatMap(coverageOf);
console.table(coverage.map(({ key, n: of, covered, medianU }) => ({ key, n: of, covered, medianU })));
const covered = coverage.map((one) => one.covered);
const hipShift = coverage.find(({ key }) => key === 'hip-shift-address-top');
const least = Math.min(...coverage.map((one) => one.n));

const figures = [
  { what: 'coverage-min', value: Math.min(...covered), unit: 'share', n: least },
  { what: 'coverage-max', value: Math.max(...covered), unit: 'share', n: least },
  {
    what: 'first-vs-oracle',
    value: hits / n,
    baseline: `Bayes with the generator's own parameters: ${(oracleHits / n).toFixed(3)}`,
    ratio: hits / oracleHits,
    unit: 'share',
    n,
  },
  { what: 'first-two', value: inTwo / n, unit: 'share', n },
  { what: 'false-first', value: blamed / soundReadings.length, unit: 'share', n: soundReadings.length },
  {
    what: 'false-first-fat',
    value: blamedForFat / fromTheFront.length,
    unit: 'share',
    n: fromTheFront.length,
  },
  { what: 'hip-shift-width-mm', value: hipShift?.medianU ?? Number.NaN, unit: 'mm', n: hipShift?.n ?? 0 },
];

const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
