// Fifty coaches of one academy press "next for me" at the same instant, again and again: no row is given twice, none is
// passed over, and nobody waits long.
import { writeFileSync } from 'node:fs';
import { newId } from '@ballfirst/db/ids';
import type { Context } from '@ballfirst/services/context';
import { claimNext } from '@ballfirst/services/inbox/claim-next';
import { openBench } from './inbox-parts/open.ts';
import { median, quantile } from './inbox-parts/timing.ts';
import { bareResources } from './parts/bare-resources.ts';

const quick = process.env.BENCH_QUICK === '1';
const coaches = 50;
const rounds = quick ? 12 : 60;
const warmUps = 2;

const bench = await openBench(quick ? 10_000 : 100_000);
const resources = bareResources(bench.db);
const membershipOf = (coach: number): string => bench.coachIds[coach % bench.coachIds.length] ?? '';
const contextOf = (coach: number): Context => ({
  academyId: bench.big,
  actor: {
    ...{ kind: 'person', personId: newId(), membershipId: membershipOf(coach), role: 'coach' },
    ...{ studentId: null, name: 'A coach' },
  },
  resources,
  requestId: newId(),
  once: { owner: membershipOf(coach), key: newId(), requestHash: 'bench' },
});

const taken: string[] = [];
const took: number[] = [];
const press = async (coach: number, counts: boolean): Promise<void> => {
  const begun = performance.now();
  const { taken: row } = await claimNext({ ctx: contextOf(coach), input: { fault: null } });
  if (counts) took.push(performance.now() - begun);
  if (row !== null) taken.push(row.id);
};
/** Coaches answer what they took a round ago: each holds one row or two, as they would. */
let answered = 0;
const answerUntil = async (end: number): Promise<void> => {
  const done = taken.slice(answered, Math.max(answered, end));
  answered += done.length;
  await bench.plain.query(
    `UPDATE submission SET status = 'answered', answered_at = now() WHERE academy_id = $1 AND id = ANY ($2)`,
    [bench.big, done],
  );
};
let passedOver = 0;
let claimedRows = 0;
try {
  for (let round = -warmUps; round < rounds; round += 1) {
    await Promise.all(Array.from({ length: coaches }, (_, coach) => press(coach, round >= 0)));
    await answerUntil(taken.length - coaches);
  }
  const { rows } = await bench.plain.query<{ claimed: number; over: number }>(
    `WITH last AS (SELECT max(priority_key) AS key FROM submission WHERE id = ANY ($2))
     SELECT count(*) FILTER (WHERE id = ANY ($2) AND claimed_by IS NOT NULL)::int AS claimed,
       count(*) FILTER (WHERE status = 'waiting' AND claimed_by IS NULL AND priority_key < last.key)::int AS over
     FROM submission, last WHERE academy_id = $1`,
    [bench.big, taken],
  );
  claimedRows = rows[0]?.claimed ?? 0;
  passedOver = rows[0]?.over ?? Number.NaN;
} finally {
  await bench.close();
}
const n = taken.length;
const doubled = n - new Set(taken).size + Math.abs(new Set(taken).size - claimedRows);
const figures = [
  { what: 'double-claims', value: doubled, unit: '', n },
  { what: 'free rows before the last one taken', value: passedOver, unit: '', n },
  { what: 'p99-ms', value: quantile(took, 0.99), unit: 'ms', n: took.length },
  { what: 'p50 of fifty at once', value: median(took), unit: 'ms', n: took.length },
];
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
