import { measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { Coverage } from './coverage.ts';
import type { TruthFigure } from './figures.ts';
import type { Summary } from './independent.ts';
import type { FaultTable } from './ranking.ts';
import { reasonsFor } from './reasons.ts';
import type { TruthResults } from './truth-results.ts';

type Sizes = {
  readonly soundAView: number;
  readonly testedACause: number;
  readonly trainedACause: number;
};

const percent = (share: number) => (100 * share).toFixed(1);
const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heads, heads.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');

const nameOf = (key: string) =>
  (measurementNames as Readonly<Record<string, { readonly name: string; readonly unitLabel: string }>>)[key];

const coverageTable = (rows: readonly Coverage[]) =>
  table(
    ['measurement', 'covered %', 'truth above %', 'truth below %', 'median doubt (1 SD)'],
    rows.map(({ key, covered, above, below, medianU }) => [
      nameOf(key)?.name ?? key,
      percent(covered),
      percent(above),
      percent(below),
      `${medianU.toFixed(1)} ${nameOf(key)?.unitLabel ?? ''}`.trim(),
    ]),
  );

const rankingTable = ({ fault, view, rows }: FaultTable) =>
  `### ${fault}, ${view}\n\n${table(
    ['planted', 'signs seen', 'first %', 'first two %', 'Bayes %', 'what stood first instead'],
    rows.map((row) => [
      row.cause,
      String(row.signs),
      percent(row.first),
      percent(row.firstTwo),
      percent(row.oracle),
      row.instead
        .slice(0, 3)
        .map(([cause, share]) => `${cause} ${percent(share)}`)
        .join(', '),
    ]),
  )}`;

/** Pairs that a picture tells apart badly: one is named for the other in more than one swing of eight. */
const alike = (tables: readonly FaultTable[]): string => {
  const lines = tables.flatMap(({ fault, rows }) =>
    rows.flatMap(({ cause, instead }) =>
      instead
        .filter(([, share]) => share > 0.125)
        .map(([other, share]) => `- ${fault}: \`${cause}\` is taken for \`${other}\` in ${percent(share)} %`),
    ),
  );
  return lines.length > 0 ? lines.join('\n') : 'None.';
};

const independentTable = ({ usual, independent }: TruthResults['summaries']): string => {
  const line = (words: string, of: (summary: Summary) => number) => [
    words,
    ...[usual, independent].map((summary) => percent(of(summary))),
  ];
  return table(
    ['figure, %', 'usual seeds', 'independent seeds'],
    [
      ['sound swings', ...[usual, independent].map(({ sound }) => String(sound))],
      [
        'readings of swings with a planted cause',
        ...[usual, independent].map(({ planted }) => String(planted)),
      ],
      line('95 % intervals that hold the truth', ({ covered }) => covered),
      line('planted cause first', ({ first }) => first),
      line('first for Bayes', ({ oracle }) => oracle),
      line('ours of Bayes', ({ first, oracle }) => first / oracle),
      line('planted cause among the first two', ({ firstTwo }) => firstTwo),
      line('sound swings blamed', ({ falseFirst }) => falseFirst),
      line('sound swings blamed for fat', ({ falseFirstFat }) => falseFirstFat),
    ],
  );
};

/** docs/truth.md of one full run: what was found, and why it falls short where it does. */
export function truthPage(results: TruthResults, figures: readonly TruthFigure[], sizes: Sizes): string {
  const rows = results.coverage.flatMap((one) => one.rows);
  return `# How far the numbers can be trusted

Written by \`npm run bench -- diagnosis\`; do not edit. Invented golfers swing by forward dynamics, a pinhole camera with
yaw, roll, a bent lens and a rolling shutter films them, and a coach marks them with errors. None of that code is shared
with what measures and ranks. ${sizes.soundAView} sound swings a view; ${sizes.testedACause} swings a planted cause, and
${sizes.trainedACause} others from which Bayes learns the generator's own parameters.

## Figures

${table(
  ['figure', 'value', 'against', 'readings'],
  figures.map(({ what, value, unit, ratio, baseline, n }) => [
    what,
    unit === 'share' ? value.toFixed(4) : `${value.toFixed(1)} ${unit}`,
    ratio === undefined ? '' : `${ratio.toFixed(3)} of ${baseline}`,
    String(n),
  ]),
)}

${reasonsFor(results, figures)}

## Intervals

Of all 95 % intervals, how many hold the true value, and on which side the others miss (1 to 4 % is asked for each side).

${results.coverage.map(({ view, rows: of }) => `### ${view}\n\n${coverageTable(of)}`).join('\n\n')}

The time ratio is not in the table: its interval is the whole range that the frame rate allows, no spread of errors.

### By how far the camera is turned

${table(
  ['yaw', 'swings', 'covered %'],
  results.byYaw.map(({ least, most, n, covered }) => [
    most >= 90 ? `over ${least}°` : `${least} to ${most}°`,
    String(n),
    percent(covered),
  ]),
)}

The doubt is stated for a camera within 4° (1 SD): it is honest over all cameras, too wide for those that stand square and
too narrow for those far off axis. A stick on the target line tells the scale; it cannot tell a turn from a tilt.

### By the clicks alone

With the camera where the method takes it to be, and no clothing, the part of the doubt that comes from clicks must hold
the truth by itself, for shifts and heights between two moments.

${coverageTable(results.statistical)}

### When the clicks are worse, or better, than stated

${table(
  ['spread of the clicks against the stated', 'covered %'],
  results.misstated.map(({ clicks, covered }) => [`${clicks} ×`, percent(covered)]),
)}

### Chances of lying past an edge

${table(
  ['said', 'was', 'standard error', 'readings'],
  results.calibration.map(({ said, was, n }) => [
    said.toFixed(3),
    was.toFixed(3),
    Math.sqrt((said * (1 - said)) / n).toFixed(4),
    String(n),
  ]),
)}

The edges are laid by chance within three doubts of the true values, so that nothing else is known of them. Readings of one
swing share its camera, so that the standard errors are somewhat too small. Clicks are no normal errors: one in ten goes
far astray, and so the middle of the scale is a little surer than said and the ends a little less.

## Causes

The first cause against Bayes with the generator's own parameters (a linear discriminant that has learned the mean of every
measurement under each cause and the covariance of golfers, cameras and clicks together).

${results.ranking.map(rankingTable).join('\n\n')}

### Told apart badly in these views

${alike(results.ranking)}

### Two causes at once, and none

With two causes of one fault planted, one of them stands first in ${percent(results.twoCauses.oneFirst)} % and both stand
among the first three in ${percent(results.twoCauses.bothInThree)} % of ${results.twoCauses.n} swings. Of sound swings,
${results.sound.map(({ view, blamed, n }) => `${percent(blamed / n)} % ${view}`).join(' and ')} are blamed for something.

## Independent seeds

The bench has always drawn the same golfers, and whoever made the method has seen its figures. These are others, which only
this table reads; Bayes is the one above.

${independentTable(results.summaries)}

${rows.length} measurements were checked.
`;
}
