import { bands } from '@ballfirst/library/bands';
import type { BandRow } from '@ballfirst/library/types';
import type { Definition } from '@ballfirst/swing/definitions/definition';
import { definitions } from '@ballfirst/swing/definitions/definitions';
import { formulas } from '@ballfirst/swing/definitions/formulas';
import { type MeasurementKey, measurementNames } from '@ballfirst/swing/definitions/measurement-names';
import type { View } from '@ballfirst/swing/marks/marks';
import { pointInWords, positionInWords } from '@ballfirst/swing/marks/missing-words';
import type { Place } from '@ballfirst/swing/marks/place';
import { behindPicture, plantedBehind } from '@ballfirst/swing/marks/planted-behind';
import { plantedFully, plantedPicture } from '@ballfirst/swing/marks/planted-marks';
import { measure } from '@ballfirst/swing/measure';

const usual = { hand: 'right', club: '8-iron', swingLength: 'full' } as const;
const doubts: Readonly<Record<View, ReadonlyMap<string, { readonly u: number; readonly clicks: number }>>> = {
  'face-on': doubtsOf('face-on'),
  'down-the-line': doubtsOf('down-the-line'),
};
function doubtsOf(view: View) {
  const { measurements } =
    view === 'face-on'
      ? measure(plantedFully(), plantedPicture, { ...usual, view })
      : measure(plantedBehind(), behindPicture, { ...usual, view });
  return new Map(measurements.map(({ key, u, uStatistical }) => [key, { u, clicks: uStatistical }]));
}

const placeInWords = ({ position, point }: Place) => `${pointInWords(point)} at ${positionInWords(position)}`;

/** How the value is made, as a formula over the places 1, 2, … in their order. */
const symbols = {
  apart: 'x1 - x2',
  raised: 'z1 - z2',
  lean: 'atan2(x1 - x2, z1 - z2)',
  leanChange: 'atan2(x1 - x2, z1 - z2) - atan2(x3 - x4, z3 - z4)',
  rise: 'atan2(z1 - z2, x1 - x2)',
  riseChange: 'atan2(z1 - z2, x1 - x2) - atan2(z3 - z4, x3 - x4)',
  above: '(x23 (z1 - z2) - z23 (x1 - x2)) / sqrt(x23² + z23²), x23 = x3 - x2, z23 = z3 - z2',
  corner: '|atan2(z1 - z2, x1 - x2) - atan2(z4 - z3, x4 - x3)|',
  bend: 'atan2(z1 - z2, x1 - x2) - atan2(z3 - z2, x3 - x2) - 180°',
} as const satisfies Record<Definition['formula'], string>;

function formulaOf({ formula, backwards, perAnkles, offset, bentByShutter }: Definition): string {
  const plain = backwards ? `-(${symbols[formula]})` : symbols[formula];
  const shifted = [
    plain,
    ...(offset.value === 0 ? [] : [`${offset.value > 0 ? '+' : '-'} ${Math.abs(offset.value)}`]),
    ...(bentByShutter ? ['+ 2400°/s · 14 ms · rows between 1 and 2 / rows of the picture'] : []),
  ].join(' ');
  return perAnkles ? `100 (${shifted}) / (x lead ankle - x trail ankle)` : shifted;
}

const rangeInWords = ({ low, high }: BandRow): string => {
  if (low === null) return `at most ${high}`;
  return high === null ? `at least ${low}` : `${low} to ${high}`;
};
const bandInWords = (row: BandRow): string => {
  const of = (what: readonly string[] | 'any', all: string) => (what === 'any' ? all : what.join(', '));
  const trust = row.source.startsWith(row.label) ? row.source : `${row.label}; ${row.source}`;
  return `${rangeInWords(row)} (${of(row.clubs, 'any club')}; ${of(row.lengths, 'any length')}; ${trust})`;
};

/** Where the drawing of a measurement lies, beside the page. */
export const sketchPath = (view: View, key: string) => `pictures/measurements/${view}-${key}.svg`;

/** One measurement in one view: drawing, definition, formula, source, doubt, bands. */
export function measurementEntry(view: View, key: MeasurementKey): string {
  const { name, unitLabel } = measurementNames[key];
  const ways = definitions.filter((one) => one.view === view && one.key === key);
  const doubt = doubts[view].get(key);
  const rows = bands.filter(
    (row) => row.key === key && (row.views === undefined || row.views.includes(view)),
  );
  const lines = ways.flatMap((way, i) => [
    `- ${i === 0 ? 'Definition' : 'Else'}: ${formulas[way.formula].words}. Places: ${way.places.map((place, n) => `${n + 1} ${placeInWords(place)}`).join('; ')}.`,
    `- Formula: \`${formulaOf(way)}\`${way.offset.u > 0 ? `, and ${way.offset.u} ${unitLabel} more doubt` : ''}${way.proxy ? '; a proxy: a 2-D picture shows it only indirectly' : ''}.`,
  ]);
  return [
    `### ${name} (\`${key}\`)`,
    '',
    `![${name}](${sketchPath(view, key)})`,
    '',
    ...lines,
    '- Source: plane geometry, the definition of the quantity itself, on places found by the pinhole model.',
    doubt === undefined
      ? '- Doubt: by the marks.'
      : `- Doubt (1 SD, sound 8-iron, 1080 by 1920 pixels, lens 3.9 m away): ${doubt.u.toFixed(1)} ${unitLabel}, of which clicks ${doubt.clicks.toFixed(1)}.`,
    `- Bands, in ${unitLabel}: ${rows.length === 0 ? 'none' : rows.map(bandInWords).join('; ')}.`,
  ].join('\n');
}
