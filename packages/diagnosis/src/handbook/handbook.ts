import { causes } from '@ballfirst/library/causes';
import { definitions } from '@ballfirst/swing/definitions/definitions';
import { type MeasurementKey, measurementKeys } from '@ballfirst/swing/definitions/measurement-names';
import { views } from '@ballfirst/swing/marks/marks';
import { causeEntry } from './cause-entry.ts';
import { measurementEntry, sketchPath } from './measurement-entry.ts';
import { sketchOf } from './sketch.ts';
import { sketchToeLine } from './sketch-toe-line.ts';

const toeLinePath = sketchPath('down-the-line', 'toe-line-to-target-stick');

const keysOf = (view: (typeof views)[number]): readonly MeasurementKey[] =>
  measurementKeys.filter((key) => definitions.some((one) => one.view === view && one.key === key));

/** The text of docs/measurements.md: every measurement of each view, and every cause with its signs. */
export function measurementsPage(): string {
  const parts = views.flatMap((view) => [
    `## Measured ${view}`,
    ...keysOf(view).map((key) => measurementEntry(view, key)),
  ]);
  return `${[
    '# What is measured, and what it is a sign of',
    'Written by `npm run -w @ballfirst/diagnosis docs`; do not edit. Lengths in mm: face-on x runs towards the target, from\nbehind away from the ball line towards the player; z runs up. Doubts are standard uncertainties (1 SD). Bands, sensitivities\nand specificities are starting values that an academy may edit; their labels say how far they can be trusted.\n[How far the numbers can be trusted](truth.md) tells how they do on invented golfers.',
    ...parts,
    '## On the ground, from behind',
    `### Line of the toes against the target stick (\`toe-line-to-target-stick\`)\n\n![Line of the toes against the target stick](${toeLinePath})\n\n- Definition: the direction on the ground of the line from the tip of the trail shoe to that of the lead shoe, less that of a\n  stick on the target line, + open. Places: both ends of the stick, both tips, at address.\n- Formula: \`atan2(x far - x near, y far - y near)\` of each line, with \`x = level / below\`, \`y = focal length / below\`, below the lens.\n- Source: pinhole geometry; how high the lens stands and how the camera is turned fall out.\n- Doubt: clicks, focal length, roll, and a phone that looks up or down by 2° (1 SD); nothing is told above 6°, nor without a stick.\n- Bands: -3° to 3° (any club; any length; common practice, no source). A sign that the player aims to one side.`,
    '## Times',
    '### Time back to time down (`tempo-ratio`)\n\n- Definition: time from the last still frame of address to the top, over the time from the top to impact.\n- Formula: `(t top - t address) / (t impact - t top)`; each count may be one frame off, and its interval is that whole range.\n- Source: counting; checked against 24/8 at 30 to 192/64 at 240 frames a second.\n- Bands: 2 to 4 for a full or three-quarter swing (common practice, no source); never a sign alone.',
    '## The arc',
    '### Lowest point of the clubhead (`low-point-ahead-of-ball`)\n\n- Definition: where the clubhead is at its lowest, + ahead of the ball, from its marks on at least three frames on both sides of\n  the ball, 45 cm from first to last, at 120 frames a second or more, with a stick on the target line.\n- Formula: a circle in a tilted plane as a camera sees it, fitted by least squares with what is known of clubs beforehand.\n- Source: derived here; worked values in the reference tests. No low point where its doubt is over 40 mm.\n- Bands: 30 to 145 mm for an iron, full or three-quarter (derived from attack angles from memory; never a sign alone).',
    '### Fat risk of a set\n\n- Definition: the chance that a swing of the set meets the ground more than 30 mm behind the ball, the chance of a thin ball (edge\n  more than 4 mm above the ground at the ball), and what brings the first to one in ten: low point forward, or arc higher.\n- Formula: `F = sqrt(2 rho b) - L`, `rho = R / sin(plane)`; low point `L` by Student’s t, depth `b` normal with 2 mm (common practice, no source).\n- Low point: mean and scatter of this submission’s and the student’s swings of the last 28 days, face-on, one club, one length, at\n  one radius `R` for all. Scatter `s^2 = max(0, spread^2 - mean u^2)`, joined with the usual 20 mm (common practice, no source) as with four\n  more swings; one swing alone: the usual one. The level of a stick is one doubt for all swings of a submission.\n- Depth: from where the brushes of the newest line test start (`b = (L - start)^2 / (2 rho)`, put right for its scatter), else the depth that\n  brings about the counted share `(fat + 1/2) / (balls + 1)`. Either way an error of the mean low point falls out.\n- Doubt: two chances in three, by the mean brush or by Jeffreys of the count. Not told for a driver, in sand, without a stick, without a\n  line test or five counted balls, or where these do not fit the frames. No promise: a direction and a size.\n- Source: derived here; worked values in the reference tests.',
    '## Causes and their signs',
    ...causes.map(causeEntry),
  ].join('\n\n')}\n`;
}

/** The drawings of the page, by their path beside it. */
export function sketches(): ReadonlyMap<string, string> {
  return new Map([
    [toeLinePath, sketchToeLine()],
    ...views.flatMap((view) =>
      keysOf(view).flatMap((key) => {
        const first = definitions.find((one) => one.view === view && one.key === key);
        return first === undefined ? [] : [[sketchPath(view, key), sketchOf(first)] as const];
      }),
    ),
  ]);
}
