// Invented golfers, filmed and marked with error, against what is measured and diagnosed: the truth test. A full run also
// writes docs/truth.md.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { viewOfCause } from '@ballfirst/demo/golfer/draw-swing';
import { firstCause } from '@ballfirst/diagnosis/first-cause';
import { type View, views } from '@ballfirst/swing/marks/marks';
import { calibrationOf } from './diagnosis-parts/calibration.ts';
import { coverageOf, coveredTogether } from './diagnosis-parts/coverage.ts';
import { figuresOf } from './diagnosis-parts/figures.ts';
import { summaryOf } from './diagnosis-parts/independent.ts';
import { truthPage } from './diagnosis-parts/page.ts';
import {
  type ByCause,
  blamedAmong,
  lookedFor,
  plantedCauses,
  rankingTables,
} from './diagnosis-parts/ranking.ts';
import { type Otherwise, type SeenSwing, seenSwing } from './diagnosis-parts/seen-swing.ts';
import type { TruthResults } from './diagnosis-parts/truth-results.ts';
import { twoCauses } from './diagnosis-parts/two-causes.ts';

const quick = process.env.BENCH_QUICK === '1';
const soundAView = quick ? 200 : 2050;
const otherwiseAView = quick ? 100 : 400;
const testedACause = quick ? 20 : 200;
const trainedACause = quick ? 40 : 150;
const twoEach = quick ? 2 : 10;
const independent = quick ? { soundAView: 50, testedACause: 5 } : { soundAView: 400, testedACause: 60 };

const many = <T>(count: number, of: (turn: number) => T): T[] =>
  Array.from({ length: count }, (_, turn) => of(turn));
const soundIn = (view: View, count: number, otherwise: Otherwise = {}, from = 1_000_000): SeenSwing[] =>
  many(count, (turn) => seenSwing(from * (views.indexOf(view) + 1) + turn, view, [], otherwise));
const bothViews = (otherwise: Otherwise) => views.flatMap((view) => soundIn(view, otherwiseAView, otherwise));
const planted = (from: number, count: number): ByCause =>
  new Map(
    plantedCauses.map((cause, i) => [
      cause,
      many(count, (turn) => seenSwing(from + 1000 * i + turn, viewOfCause(cause), [cause])),
    ]),
  );

const sound = new Map(views.map((view) => [view, soundIn(view, soundAView)]));
const all = [...sound.values()].flat();
const fromTheFront = sound.get('face-on') ?? [];
/** A camera that stands as the method assumes: what is left are the clicks and the golfer's own depths. */
const asAssumed = {
  yawDeg: 0,
  rollDeg: 0,
  k1: 0,
  readoutS: 0,
  distanceMm: 3900,
  heightMm: 1000,
} as const;
const turnedBy = (least: number, most: number) =>
  all.filter(({ yawDeg }) => Math.abs(yawDeg) >= least && Math.abs(yawDeg) < most);

const trained = planted(20_000_000, trainedACause);
const ranking = rankingTables(planted(10_000_000, testedACause), trained);
/** Seeds that nothing was ever looked at with while the method was made: only this table reads them. */
const unseen = {
  sound: new Map(views.map((view) => [view, soundIn(view, independent.soundAView, {}, 600_000_000)])),
  ranking: rankingTables(planted(900_000_000, independent.testedACause), trained),
};

const results: TruthResults = {
  coverage: views.map((view) => ({ view, rows: coverageOf(sound.get(view) ?? []) })),
  byYaw: [
    [0, 2],
    [2, 4],
    [4, 6],
    [6, 90],
  ].map(([least = 0, most = 90]) => {
    const swings = turnedBy(least, most);
    return { least, most, n: swings.length, covered: coveredTogether(swings) };
  }),
  statistical: coverageOf(
    bothViews({ camera: asAssumed, noise: { clothingMm: {} } }),
    ({ uStatistical }) => uStatistical,
  ).filter(({ key }) => /-(shift|height)-/.test(key)),
  misstated: [0.5, 1, 1.5, 2].map((clicks) => ({
    clicks,
    covered: coveredTogether(bothViews({ noise: { clicks } })),
  })),
  calibration: calibrationOf(all, 9),
  ranking,
  summaries: { usual: summaryOf(sound, ranking), independent: summaryOf(unseen.sound, unseen.ranking) },
  twoCauses: twoCauses(30_000_000, twoEach),
  sound: views.map((view) => ({ view, ...blamedAmong(view, sound.get(view) ?? []) })),
  blamedForFat: {
    n: fromTheFront.length,
    blamed: fromTheFront.filter((swing) => firstCause(lookedFor('fat', swing)) !== null).length,
  },
};

for (const { view, rows } of results.coverage) {
  console.log(view);
  console.table(rows);
}
for (const { fault, view, rows } of results.ranking) {
  console.log(`${fault}, ${view}`);
  console.table(
    rows.map(({ cause, first, firstTwo, oracle, instead: [most] }) => ({
      cause,
      first,
      firstTwo,
      oracle,
      instead: most === undefined ? '' : `${most[0]} ${most[1].toFixed(2)}`,
    })),
  );
}
console.table(results.calibration);

const figures = figuresOf(results);
if (!quick)
  writeFileSync(
    join(import.meta.dirname, '..', '..', 'docs', 'truth.md'),
    truthPage(results, figures, { soundAView, testedACause, trainedACause }),
  );
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
