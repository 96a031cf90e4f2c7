// Four students send 1 GiB at once in chunks of 8 MiB, against a plain streamed PUT with fdatasync; then the door is
// killed in mid-upload, and what it had acknowledged must be there.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { type Door, kill, openDoors, peakRssMib } from './upload-parts/door.ts';
import { ask, create, offsetOf, patch, piecesOf } from './upload-parts/send.ts';

const MIB = 2 ** 20;
const quick = process.env.BENCH_QUICK === '1';
const senders = 4;
const fileBytes = (quick ? 32 : 256) * MIB;
const rounds = 3;
const kills = 5;

const figures: Record<string, unknown>[] = [];
const folder = mkdtempSync(join(tmpdir(), 'ballfirst-bench-upload-'));
/** Bytes that differ from place to place, so that a chunk in the wrong place would be seen. */
const chunk = Buffer.alloc(8 * MIB);
for (let at = 0; at < chunk.length; at += 4) chunk.writeUInt32LE((at * 2654435761) % 2 ** 32, at);

const median = (values: number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const rate = (tookMs: number): number => (senders * fileBytes) / MIB / (tookMs / 1000);

async function timed(act: (sender: number) => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await Promise.all(Array.from({ length: senders }, (_, sender) => act(sender)));
  return performance.now() - begun;
}

function* fileInPieces(): Iterable<Buffer> {
  for (let sent = 0; sent < fileBytes; sent += chunk.length) yield* piecesOf(chunk);
}

async function upload(door: Door, cookie: string): Promise<string> {
  const at = await create(door.address, cookie, fileBytes);
  for (let offset = 0; offset < fileBytes; ) offset = await patch(door.address + at, cookie, offset, chunk);
  return at;
}

/** Acknowledged bytes that are not there, or not the same, after kill -9 in the middle of a chunk. */
async function lostAfterKill(start: () => Promise<Door>, cookie: string, round: number) {
  const first = await start();
  const at = await create(first.address, cookie, 8 * chunk.length);
  let acknowledged = 0;
  const sending = (async () => {
    for (;;) acknowledged = await patch(first.address + at, cookie, acknowledged, chunk);
  })().catch(() => undefined);
  // Another place in the upload each time: after so many chunks, and a piece of the next.
  while (acknowledged < round * chunk.length) await new Promise((next) => setImmediate(next));
  await Promise.race([sending, new Promise((later) => setTimeout(later, 3 + 7 * round))]);
  await kill(first.child);
  await sending;
  const second = await start();
  const offset = await offsetOf(second.address + at, cookie);
  const clipId = at.split('/').at(-1) ?? '';
  await kill(second.child);
  const found = readFileSync(fileOf(clipId));
  let wrong = Math.max(0, acknowledged - offset);
  for (let byte = 0; byte < offset; byte += 1) if (found[byte] !== chunk[byte % chunk.length]) wrong += 1;
  rmSync(fileOf(clipId));
  return wrong;
}

/** Uploads lie under the academy of their student: there is one for each. */
function fileOf(clipId: string): string {
  const found = readdirSync(folder)
    .map((academy) => join(folder, academy, 'clips', clipId, 'original'))
    .find((path) => existsSync(path));
  if (found === undefined) throw new Error('The file of an acknowledged upload is gone.');
  return found;
}

async function putAddress(): Promise<{ url: string; stop: () => void }> {
  const script = join(import.meta.dirname, 'upload-parts', 'put-server.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', script, folder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const [port] = await once(createInterface({ input: child.stdout }), 'line');
  return { url: `http://127.0.0.1:${port}`, stop: () => child.kill('SIGKILL') };
}

const doors = await openDoors(folder, senders);
const put = await putAddress();
const running: Door[] = [];
const start = async (): Promise<Door> => {
  const door = await doors.start();
  running.push(door);
  return door;
};
try {
  const door = await start();
  const rates: { put: number; door: number }[] = [];
  // One round before the clock counts: both sides warm, and then in turns, so that both meet the same disk.
  for (let round = 0; round <= rounds; round += 1) {
    const headers = { 'content-length': `${fileBytes}`, connection: 'close' };
    const putMs = await timed((sender) =>
      ask({ method: 'PUT', url: `${put.url}/${sender}`, headers }, fileInPieces()),
    );
    const made: string[] = [];
    const doorMs = await timed(async (sender) =>
      made.push(fileOf((await upload(door, doors.cookies[sender] ?? '')).split('/').at(-1) ?? '')),
    );
    for (const path of made) rmSync(path);
    if (round > 0) rates.push({ put: rate(putMs), door: rate(doorMs) });
  }
  figures.push({
    what: 'vs-put-fsync',
    value: median(rates.map((it) => it.door)),
    unit: 'MiB/s',
    baseline: `a streamed PUT with fdatasync, ${Math.round(median(rates.map((it) => it.put)))} MiB/s`,
    ratio: median(rates.map((it) => it.door / it.put)),
    n: rates.length,
  });
  figures.push({ what: 'peak-rss-mib', value: peakRssMib(door.child), unit: 'MiB', n: 1 });
  await kill(door.child);
  let lost = 0;
  for (let round = 0; round < kills; round += 1)
    lost += await lostAfterKill(start, doors.cookies[0] ?? '', round);
  figures.push({ what: 'lost-bytes-after-kill', value: lost, unit: 'bytes', n: kills });
} finally {
  put.stop();
  for (const { child } of running) await kill(child);
  await doors.close();
  rmSync(folder, { recursive: true, force: true });
}

const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
