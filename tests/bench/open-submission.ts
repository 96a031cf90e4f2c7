// Everything the review screen needs, in one request: twenty coaches each open a swing every half second through the door,
// every swing marked as a fat strike is, so that its measurements and causes are reckoned for each answer.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { firstPassFor } from '@ballfirst/swing/marks/first-pass';
import { openBench } from './inbox-parts/open.ts';
import { median, quantile, timed } from './inbox-parts/timing.ts';

const quick = process.env.BENCH_QUICK === '1';
const coaches = 20;
const openEveryMs = 500;
const opens = quick ? 26 : 60;
const marked = 400;

type Truth = {
  readonly positions: Readonly<Record<string, number>>;
  readonly points: Readonly<Record<string, Readonly<Record<string, readonly [number, number]>>>>;
};
const kept = join(import.meta.dirname, '..', '..', 'packages', 'demo', 'clips', 'truth', 'hang-back.json');
const truth = JSON.parse(readFileSync(kept, 'utf8')) as Truth;
const marks = firstPassFor('fat', 'full').places.flatMap(({ position, point }) => {
  const [frame, at] = [truth.positions[position], truth.points[position]?.[point]];
  return frame === undefined || at === undefined ? [] : [{ position, point, frame, x: at[0], y: at[1] }];
});

const bench = await openBench(quick ? 10_000 : 100_000);

/** So many of those that wait, each with the marks of the first pass. @returns their ids */
async function markSome(): Promise<string[]> {
  const { rows } = await bench.plain.query<{ id: string }>(
    `WITH chosen AS (
       SELECT id FROM submission WHERE academy_id = $1 AND status = 'waiting' ORDER BY priority_key, id LIMIT $2
     ), filmed AS (
       UPDATE clip SET width_px = 720, height_px = 1280, frames = 264, fps = 120
       WHERE academy_id = $1 AND submission_id IN (SELECT id FROM chosen) RETURNING id
     ), placed AS (
       INSERT INTO mark (academy_id, clip_id, position, point, frame, x, y, source, by_membership, at)
       SELECT $1, f.id, m.position, m.point, m.frame, m.x, m.y, 'coach', $3, now()
       FROM filmed f, jsonb_to_recordset($4) m(position text, point text, frame int, x float8, y float8)
     ) SELECT id FROM chosen`,
    [bench.big, marked, bench.coachIds[0], JSON.stringify(marks)],
  );
  return rows.map(({ id }) => id);
}

const took: number[] = [];
let measured = 0;
try {
  const [ids, door] = [await markSome(), await bench.startDoor()];
  const open = async (cookie: string, at: number): Promise<void> => {
    const answer = await fetch(`${door}/api/submissions/${ids[at % ids.length]}/review`, {
      headers: { cookie },
    });
    const text = await answer.text();
    if (answer.status !== 200) throw new Error(`The review answered ${answer.status}: ${text}`);
    measured = JSON.parse(text).evidence[0].readings.length;
  };
  const cookies: string[] = [];
  for (const id of bench.coachIds.slice(0, coaches)) cookies.push(await bench.signIn(id));
  // The first ones plan the statements of each connection and warm the code; they are not counted.
  for (let at = 0; at < 20; at += 1)
    await Promise.all(cookies.map((cookie, place) => open(cookie, at + place)));
  const coach = async (cookie: string, place: number): Promise<void> => {
    await new Promise((later) => setTimeout(later, (place * openEveryMs) / coaches));
    for (let at = 0; at < opens; at += 1) {
      const ms = await timed(() => open(cookie, place * opens + at));
      took.push(ms);
      await new Promise((later) => setTimeout(later, Math.max(0, openEveryMs - ms)));
    }
  };
  await Promise.all(cookies.map(coach));
} finally {
  await bench.close();
}
const n = took.length;
const figures = [
  { what: 'p99-ms', value: quantile(took, 0.99), unit: 'ms', n },
  { what: 'p50', value: median(took), unit: 'ms', n },
  { what: 'readings in an answer', value: measured, unit: '', n: 1 },
];
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
