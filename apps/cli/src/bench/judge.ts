import type { Bar } from './bars.ts';

/** What a bench measured. `ratio` is the value over the baseline, measured in the same run. */
export type Measured = {
  readonly what: string;
  readonly value?: number;
  readonly unit: string;
  readonly baseline?: string;
  readonly ratio?: number;
  /** How many readings stand behind it. */
  readonly n?: number;
  /** Why it could not be measured. */
  readonly why?: string;
};

/** A line of a report: a measured figure and whether it reaches its bar. */
export type Figure = Measured & { readonly bar?: Bar; readonly ok: boolean };

/** Judges what was measured, and adds the figures that should have been and were not. */
export function judge(measured: readonly Measured[], bars: Readonly<Record<string, Bar>>): Figure[] {
  const missing = Object.keys(bars)
    .filter((what) => !measured.some((figure) => figure.what === what))
    .map((what): Measured => ({ what, unit: '', why: 'the bench did not measure it' }));
  return [...measured, ...missing].map((figure) => {
    const bar = bars[figure.what];
    if (bar === undefined) return { ...figure, ok: figure.why === undefined };
    const why = figure.why ?? whyNot(figure, bar);
    return why === undefined ? { ...figure, bar, ok: true } : { ...figure, bar, ok: false, why };
  });
}

/** @returns undefined when the figure reaches the bar */
function whyNot(figure: Measured, bar: Bar): string | undefined {
  const judged = bar.of === 'value' ? figure.value : figure.ratio;
  if (judged === undefined || !Number.isFinite(judged)) return 'it was not measured';
  if (bar.n !== undefined && (figure.n ?? 0) < bar.n)
    return `it stands on ${figure.n ?? 0} readings, not ${bar.n}`;
  if (bar.max !== undefined && judged > bar.max) return `above ${bar.max}`;
  if (bar.min !== undefined && judged < bar.min) return `below ${bar.min}`;
  return undefined;
}
