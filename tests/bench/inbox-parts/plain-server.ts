// Fastify and one named statement on the plain tables: the same bytes as the API answers, without sessions, policies,
// checks of what goes out, or anything else.

import { dayEdges } from '@ballfirst/services/inbox/block-of';
import { inboxItemOf } from '@ballfirst/services/inbox/inbox-item-of';
import { cursorOf } from '@ballfirst/services/keyset';
import Fastify from 'fastify';
import pg from 'pg';
import { readPlain } from './plain.ts';

const [url = '', academyId = ''] = process.argv.slice(2);
const pool = new pg.Pool({ connectionString: url, max: 12 });
const app = Fastify();
app.get('/', async () => {
  const now = new Date();
  const rows = await readPlain(pool, { academyId, limit: 51, fault: null, free: false, now });
  const edges = dayEdges(now, rows[0]?.zone ?? 'UTC');
  const items = rows.slice(0, 50);
  const last = items.at(-1);
  const none = new Map<string, string>();
  return {
    items: items.map((row) => inboxItemOf(row, edges, none)),
    next: last === undefined ? null : cursorOf({ key: last.priorityKey, id: last.id }),
  };
});
console.error(JSON.stringify({ address: await app.listen({ host: '127.0.0.1', port: 0 }) }));
