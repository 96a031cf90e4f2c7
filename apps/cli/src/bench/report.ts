import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus, release, totalmem } from 'node:os';
import { join } from 'node:path';
import { say } from '../say.ts';
import type { Figure } from './judge.ts';

export type BenchReport = {
  readonly name: string;
  readonly at: string;
  readonly machine: string;
  readonly figures: readonly Figure[];
};

/** Processor, memory and versions: a figure says little without them. */
export function describeMachine(): string {
  const processors = cpus();
  const memory = Math.round(totalmem() / 2 ** 30);
  const model = processors[0]?.model.trim() ?? 'unknown processor';
  return `${processors.length} x ${model}, ${memory} GiB, ${process.platform} ${release()}, Node ${process.versions.node}`;
}

/** Writes `reports/NAME.json` and prints the same as a table. */
export function giveReport(root: string, report: BenchReport): void {
  const folder = join(root, 'reports');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${report.name}.json`), `${JSON.stringify(report, null, 2)}\n`);
  for (const line of tableOf(report)) say(line);
}

export function tableOf({ name, figures }: BenchReport): string[] {
  const widest = Math.max(...figures.map((figure) => figure.what.length), 4);
  return figures.map((figure) => {
    const value = figure.value === undefined ? '-' : `${round(figure.value)} ${figure.unit}`;
    const ratio =
      figure.ratio === undefined
        ? ''
        : `  ratio ${round(figure.ratio)} to ${figure.baseline ?? 'the baseline'}`;
    const verdict = figure.ok ? 'ok' : `MISSED (${figure.why ?? 'no reason given'})`;
    return `${name}  ${figure.what.padEnd(widest)}  ${value.padStart(14)}${ratio}  ${verdict}`;
  });
}

function round(value: number): string {
  return Number(value.toPrecision(4)).toString();
}
