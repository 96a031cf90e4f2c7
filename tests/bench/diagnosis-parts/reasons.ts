import type { TruthFigure } from './figures.ts';
import type { TruthResults } from './truth-results.ts';

const percent = (share: number) => (100 * share).toFixed(1);

/** What the bars ask for, and for each that is missed why. */
export function reasonsFor(results: TruthResults, figures: readonly TruthFigure[]): string {
  const of = (what: string) => figures.find((figure) => figure.what === what);
  const rows = results.coverage.flatMap((one) => one.rows);
  const lines: string[] = [];
  const outside = rows.filter(({ covered }) => covered < 0.93 || covered > 0.97);
  if (outside.length > 0)
    lines.push(
      `- **Coverage** outside 93 to 97 %: ${outside.map(({ key, covered }) => `${key} ${percent(covered)} %`).join(', ')}.`,
    );
  const oneSided = rows.filter(
    ({ above, below }) => Math.max(above, below) > 0.04 || Math.min(above, below) < 0.01,
  );
  if (oneSided.length > 0)
    lines.push(
      `- **Tails** outside 1 to 4 %: ${oneSided.map(({ key, above, below }) => `${key} ${percent(above)} above and ${percent(below)} below`).join(', ')}.`,
    );
  const ratio = of('first-vs-oracle')?.ratio ?? 1;
  if (ratio < 0.95)
    lines.push(
      `- **First cause** reaches ${percent(ratio)} % of Bayes, not 95. The likely reasons, inferred and not proven one by one: Bayes knows here what a library of rules does not: that a handle, a ball or a hip which is off at address is not off at impact in this generator, and how the turn of one camera moves all lengths from the ball at once. Our signs are weighed one by one with the whole doubt of the camera in each, and signs that share marks are counted as if their errors went together. What would mend it is one joint likelihood over all readings with the covariance that the measurements already carry.`,
    );
  const width = of('hip-shift-width-mm')?.value ?? 0;
  if (width > 25)
    lines.push(
      `- **Doubt of the hip shift** is ${width.toFixed(0)} mm, not 25. Two clicks of 6 px at 3.1 mm a pixel, one in ten of them three times as far astray, give 36 mm (√2 · 6 · 3.1 · 1.34); clothing that moves between the moments adds 17 mm (√(2 · ½) · 17). The method adds less than 2 mm to that. No method takes it away from one click a moment: it falls to 31 mm with both outer edges of the hips clicked, and to 25 mm with each of them clicked twice.`,
    );
  if (lines.length === 0) return 'Every bar is reached.';
  return `### Where it falls short, and why\n\n${lines.join('\n')}`;
}
