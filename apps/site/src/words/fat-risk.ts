import type { SwingEvidence } from '@ballfirst/diagnosis/evidence-of';

export type FatRisk = NonNullable<SwingEvidence['fatRisk']>;
export type FatRiskTold = Extract<FatRisk, { kind: 'told' }>;
type Units = 'metric' | 'imperial';

const inchMm = 25.4; // exact: international yard and pound agreement of 1959

/** A length in mm or inches, by the student's units; never nought. */
export const lengthInWords = (mm: number, units: Units): string =>
  units === 'imperial'
    ? `${Math.max(0.1, Math.abs(mm) / inchMm).toFixed(1)} in`
    : `${Math.max(1, Math.round(Math.abs(mm)))} mm`;
/** The same with its doubt (1 SD). */
const doubted = (mm: number, u: number, units: Units): string =>
  units === 'imperial'
    ? `${(mm / inchMm).toFixed(1)} ± ${Math.max(0.1, u / inchMm).toFixed(1)} in`.replace('-', '−')
    : `${Math.round(mm)} ± ${Math.max(1, Math.round(u))} mm`.replace('-', '−');
const between = (lowMm: number, highMm: number, units: Units): string =>
  units === 'imperial'
    ? `${(lowMm / inchMm).toFixed(1)} to ${(highMm / inchMm).toFixed(1)} in`
    : `${Math.round(lowMm)} to ${Math.round(highMm)} mm`;

/** A chance as a share of ten swings. */
const inTen = (chance: number): string => {
  const count = Math.round(10 * chance);
  if (count === 0) return 'fewer than 1 in 10';
  return count === 10 ? 'nearly all' : `about ${count} in 10`;
};
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const tenths = (low: number, high: number): string => {
  const [from, to] = [Math.round(10 * low), Math.round(10 * high)];
  return from === to ? inTen((low + high) / 2).replace('about ', '') : `${from} to ${to} in 10`;
};
/** Below this nothing is worth moving, mm. */
const worthMovingMm = 5;

/** How often the set meets the ground first: the sentence that is read first. */
export const groundFirst = ({ fat }: FatRiskTold, units: Units): string => {
  const one = Math.round(10 * fat) <= 1;
  const behind = units === 'imperial' ? '1.2 in' : '3 cm';
  return `${capital(inTen(fat))} of these swings ${one ? 'meets' : 'meet'} the ground more than ${behind} behind the ball.`;
};

/** What would bring it to one in ten, and what that costs. */
export const waysInWords = ({ forward, higher }: FatRiskTold, units: Units): string => {
  if (forward.byMm < worthMovingMm) return 'That is 1 in 10 or fewer: the low point lies well.';
  return `Low point ${lengthInWords(forward.byMm, units)} further forward brings it to 1 in 10, ${inTen(forward.thin)} then thin. An arc ${lengthInWords(higher.byMm, units)} higher does it too, at a price: ${inTen(higher.thin)} thin, ${inTen(higher.missesGround)} never on the ground.`;
};

/** How sure that is: two chances in three. */
export const doubtInWords = ({ fatLow, fatHigh, forward }: FatRiskTold, units: Units): string => {
  const share = `Two chances in three: ${tenths(fatLow, fatHigh)}`;
  if (forward.byMm < worthMovingMm) return `${share}.`;
  return `${share}, forward ${between(forward.lowMm, forward.highMm, units)}.`;
};

const percent = (chance: number): string => `${Math.round(100 * chance)} %`;

/** The figures behind it, by name. */
export const figuresOf = (
  risk: FatRiskTold,
  units: Units,
): readonly (readonly [name: string, figure: string])[] => [
  ['Mean low point ahead of the ball', doubted(risk.lowPointMm.value, risk.lowPointMm.u, units)],
  ['Scatter from swing to swing', lengthInWords(risk.scatterMm, units)],
  ['Depth of the arc under the ground', doubted(risk.depthMm.value, risk.depthMm.u, units)],
  ['Radius of the arc', doubted(risk.radiusMm.value, risk.radiusMm.u, units)],
  ['Ground first', `${percent(risk.fat)} (${percent(risk.fatLow)} to ${percent(risk.fatHigh)})`],
  ['Thin now', percent(risk.thin)],
  ['Never on the ground now', percent(risk.missesGround)],
];

export const fatRiskWords = {
  title: 'The ground behind the ball',
  notTold: 'Not told',
  figures: 'Figures',
  surer: 'What would make it surer',
} as const;
