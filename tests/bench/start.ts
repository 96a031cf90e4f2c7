// From the command to the first usable page: on a new data folder (cold) and on the same one again (warm).
// Packages are installed and everything is built before the clock runs.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { lstatSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const root = join(import.meta.dirname, '..', '..');
const MIB = 2 ** 20;

const figures: { what: string; value?: number; unit: string; n?: number; why?: string }[] = [];

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  return typeof address === 'object' && address !== null ? address.port : 0;
}

/** Starts the service and returns when the sign-in page has come whole. */
async function startOnce(home: string): Promise<{ service: ChildProcess; tookMs: number }> {
  const port = await freePort();
  const begun = performance.now();
  const service = spawn(process.execPath, ['apps/cli/launch.mjs', 'start'], {
    cwd: root,
    env: { ...process.env, BALLFIRST_HOME: home, PORT: String(port) },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  for await (const line of createInterface({ input: service.stdout })) {
    if (line.startsWith('ready ')) break;
  }
  service.stdout.resume();
  const page = await fetch(`http://127.0.0.1:${port}/sign-in`);
  const text = await page.text();
  if (page.status !== 200 || !text.includes('</html>')) throw new Error(`sign-in answered ${page.status}`);
  return { service, tookMs: performance.now() - begun };
}

async function stop(service: ChildProcess): Promise<void> {
  const ended = once(service, 'exit');
  service.kill('SIGTERM');
  await ended;
}

/** Resident memory of the API among the children of the service (Linux). */
function apiRssMib(service: ChildProcess): number {
  for (const name of readdirSync('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    try {
      const status = readFileSync(`/proc/${name}/status`, 'utf8');
      const isChild = status.includes(`\nPPid:\t${service.pid}\n`);
      if (!isChild || !readFileSync(`/proc/${name}/cmdline`, 'utf8').includes('apps/api/dist')) continue;
      return Number(/VmRSS:\s+(\d+) kB/.exec(status)?.[1]) / 1024;
    } catch {
      // It ended while we looked.
    }
  }
  throw new Error('the API process was not found');
}

function bytesOf(folder: string): number {
  return readdirSync(folder, { withFileTypes: true }).reduce((sum, entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sum + bytesOf(path);
    return entry.isFile() ? sum + lstatSync(path).blocks * 512 : sum;
  }, 0);
}

const home = mkdtempSync(join(tmpdir(), 'ballfirst-bench-start-'));
try {
  const cold = await startOnce(home);
  await stop(cold.service);
  const warm = await startOnce(home);
  figures.push({ what: 'cold-ms', value: cold.tookMs, unit: 'ms', n: 1 });
  figures.push({ what: 'warm-ms', value: warm.tookMs, unit: 'ms', n: 1 });
  try {
    figures.push({ what: 'api-rss-mib', value: apiRssMib(warm.service), unit: 'MiB', n: 1 });
  } catch (error) {
    figures.push({ what: 'api-rss-mib', unit: 'MiB', why: String(error) });
  }
  await stop(warm.service);
  figures.push({
    what: 'node-modules-mib',
    value: bytesOf(join(root, 'node_modules')) / MIB,
    unit: 'MiB',
    n: 1,
  });
} finally {
  rmSync(home, { recursive: true, force: true });
}

const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
