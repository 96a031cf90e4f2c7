// All measurements of one fully marked swing with their doubt, the readings against bands and the ranked causes. The code runs as
// it does in the browser and the services, bundled: a loader of TypeScript names every function anew that a swing makes.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const n = process.env.BENCH_QUICK === '1' ? 500 : 5000;

async function bundled(): Promise<typeof import('./measure-parts/diagnose.ts')> {
  const folder = mkdtempSync(join(tmpdir(), 'ballfirst-bench-measure-'));
  const outfile = join(folder, 'diagnose.mjs');
  try {
    const entryPoints = [join(import.meta.dirname, 'measure-parts', 'diagnose.ts')];
    await build({ entryPoints, outfile, bundle: true, format: 'esm', platform: 'node', target: 'node20.19' });
    return await import(pathToFileURL(outfile).href);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const { diagnose, swingOf } = await bundled();

for (let turn = 0; turn < 200; turn += 1) diagnose(swingOf(turn));
let measured = 0;
const times: number[] = [];
const cpuBefore = process.cpuUsage();
for (let turn = 0; turn < n; turn += 1) {
  const swing = swingOf(turn);
  const begun = performance.now();
  measured += diagnose(swing);
  times.push(performance.now() - begun);
}
const { user, system } = process.cpuUsage(cpuBefore);
times.sort((a, b) => a - b);
const at = (share: number) => times[Math.min(n - 1, Math.ceil(share * n) - 1)] ?? Number.NaN;

const figures = [
  { what: 'p50-ms', value: at(0.5), unit: 'ms', n },
  { what: 'p95-ms', value: at(0.95), unit: 'ms', n },
  { what: 'p99-ms', value: at(0.99), unit: 'ms', n },
  { what: 'mean-processor-ms', value: (user + system) / 1000 / n, unit: 'ms', n },
  { what: 'measurements-a-swing', value: measured / n, unit: 'measurements', n },
];

const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
