// A page of fifty rows among a million submissions of one academy, 55 of 100 of them waiting, with 200 academies beside
// it: the function under row security against the same select on the plain tables, the door against Fastify with that
// select, the depth, ten times the rows, and twenty coaches who each ask twice a second.
import { writeFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { type InboxFilters, type InboxQuery, readInboxPage } from '@ballfirst/db/reads/inbox-page';
import { openBench } from './inbox-parts/open.ts';
import { readPlain } from './inbox-parts/plain.ts';
import { inTurns, median, quantile, timed } from './inbox-parts/timing.ts';

const quick = process.env.BENCH_QUICK === '1';
const submissions = quick ? 100_000 : 1_000_000;
const limit = 50;
const coaches = 20;
const askEveryMs = 500;
const asks = quick ? 26 : 60;

const figures: Record<string, unknown>[] = [];
const bench = await openBench(submissions);
const now = new Date();
const page = (filters: InboxFilters = {}, more: Partial<InboxQuery> = {}) =>
  readInboxPage(bench.db, { academyId: bench.big, limit, filters, now, ...more });
const plain = (fault: string | null, free: boolean) =>
  readPlain(bench.plain, { academyId: bench.big, limit, fault, free, now });

async function sqlVersusPlain(): Promise<void> {
  const variants = [
    { what: 'no filter', filters: {}, fault: null, free: false },
    { what: 'one fault', filters: { fault: 'shank' }, fault: 'shank', free: false },
    { what: 'not taken', filters: { claimedBy: 'none' }, fault: null, free: true },
  ];
  const found = [];
  for (const { what, filters, fault, free } of variants) {
    const ours = (await page(filters)).map(({ id }) => id);
    const theirs = (await plain(fault, free)).map(({ id }) => id);
    if (ours.length !== limit || ours.join() !== theirs.join()) throw new Error(`${what}: not the same rows`);
    const { one, other } = await inTurns(
      200,
      () => page(filters),
      () => plain(fault, free),
    );
    found.push({ what, ms: median(one), ratio: median(one) / median(other) });
  }
  const worst = found.toSorted((a, b) => b.ratio - a.ratio)[0];
  figures.push({
    ...{ what: 'sql-vs-plain', value: worst?.ms, unit: 'ms', n: 200, ratio: worst?.ratio },
    baseline: `the same select without policies (worst of three: ${worst?.what})`,
  });
  for (const { what, ms, ratio } of found) {
    figures.push({ what: `sql ${what}`, value: ms, unit: 'ms', n: 200, ratio, baseline: 'the same select' });
  }
}

async function depthAndSize(): Promise<void> {
  const { rows } = await bench.plain.query<{ key: Date; id: string }>(
    `SELECT priority_key AS key, id FROM submission WHERE academy_id = $1 AND status = 'waiting'
     ORDER BY priority_key, id LIMIT 1 OFFSET $2`,
    [bench.big, 999 * limit - 1],
  );
  const after = rows[0];
  if (after === undefined) throw new Error('There are no thousand pages.');
  const depth = await inTurns(
    200,
    () => page({}, { after }),
    () => page(),
  );
  figures.push({
    ...{ what: 'page1000-vs-page1', value: median(depth.one), unit: 'ms', n: 200, baseline: 'page 1' },
    ratio: median(depth.one) / median(depth.other),
  });
  const size = await inTurns(
    200,
    () => page(),
    () => page({}, { academyId: bench.small }),
  );
  figures.push({
    ...{
      what: 'rows-x10',
      value: median(size.one),
      unit: 'ms',
      n: 200,
      baseline: 'a tenth of the rows, by as many students',
    },
    ratio: median(size.one) / median(size.other),
  });
}

const read = async (address: string, cookie: string): Promise<string> => {
  const answer = await fetch(address, { headers: { cookie } });
  const text = await answer.text();
  if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}: ${text}`);
  return text;
};

async function throughTheDoor(): Promise<void> {
  const [door, other] = [await bench.startDoor(), await bench.startPlain()];
  const cookies: string[] = [];
  for (const id of bench.coachIds.slice(0, coaches)) cookies.push(await bench.signIn(id));
  const ask = (cookie = cookies[0] ?? '') => read(`${door}/api/inbox`, cookie);
  const [ours, theirs] = [await ask(), await read(other, '')];
  // The same but for the order of the fields.
  if (ours.length !== theirs.length || !isDeepStrictEqual(JSON.parse(ours), JSON.parse(theirs))) {
    throw new Error('The door and the baseline do not answer the same.');
  }
  const burst = (one: () => Promise<unknown>) => () => Promise.all(Array.from({ length: 8 }, () => one()));
  const found = await inTurns(
    quick ? 40 : 100,
    burst(() => ask()),
    burst(() => read(other, '')),
  );
  figures.push({
    ...{
      what: 'api-vs-fastify-pg',
      value: 8000 / median(found.one),
      unit: 'pages/s',
      n: found.one.length * 8,
    },
    ...{ baseline: 'Fastify + pg, the same bytes', ratio: median(found.other) / median(found.one) },
  });
  const took: number[] = [];
  const coach = async (cookie: string, place: number): Promise<void> => {
    await new Promise((later) => setTimeout(later, (place * askEveryMs) / coaches));
    for (let at = 0; at < asks; at += 1) {
      const ms = await timed(() => ask(cookie));
      took.push(ms);
      await new Promise((later) => setTimeout(later, Math.max(0, askEveryMs - ms)));
    }
  };
  await Promise.all(cookies.map(coach));
  figures.push({ what: 'p99-ms', value: quantile(took, 0.99), unit: 'ms', n: took.length });
  figures.push({ what: 'p50 with 20 coaches', value: median(took), unit: 'ms', n: took.length });
}

try {
  await sqlVersusPlain();
  await depthAndSize();
  await throughTheDoor();
} finally {
  await bench.close();
}
const output = process.env.BENCH_OUTPUT;
if (output) writeFileSync(output, JSON.stringify(figures));
else console.log(figures);
