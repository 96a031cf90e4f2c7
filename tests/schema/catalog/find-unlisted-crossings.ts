import { readFile } from 'node:fs/promises';
import type { Catalog } from './client.ts';

const listPath = new URL('../../../prisma/crossings.md', import.meta.url);
const lineOfList = /^- `(?<signature>[a-z_]+\([^`]*\))`: (?<why>\S.*)$/gm;

type Crossing = {
  signature: string;
  owner: string;
  definer: boolean;
  config: string[] | null;
  space: string;
};

/** Functions that look across academies, against the list; and any of them that is not built as a crossing must be. */
export const findUnlistedCrossings = async (catalog: Catalog): Promise<string[]> => {
  const text = await readFile(listPath, 'utf8');
  const listed = new Set([...text.matchAll(lineOfList)].map((match) => match.groups?.signature ?? ''));
  const { rows } = await catalog.query<Crossing>(`
    SELECT p.proname || '(' || coalesce((SELECT string_agg(format_type(t, NULL), ', ' ORDER BY o)
        FROM unnest(p.proargtypes) WITH ORDINALITY AS a(t, o)), '') || ')' AS signature,
      p.proowner::regrole::text AS owner, p.prosecdef AS definer, p.proconfig AS config, n.nspname AS space
    FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
    WHERE n.nspname = 'crossing' OR p.proowner = 'crossing'::regrole
      OR (p.prosecdef AND n.nspname IN ('public', 'identity', 'system'))
    ORDER BY 1`);
  const findings: string[] = [];
  for (const row of rows) {
    if (!listed.delete(row.signature)) findings.push(`${row.signature}: not in prisma/crossings.md`);
    if (row.space !== 'crossing') findings.push(`${row.signature}: lies in schema ${row.space}`);
    if (row.owner !== 'crossing') findings.push(`${row.signature}: owned by ${row.owner}`);
    if (!row.definer) findings.push(`${row.signature}: runs as its caller`);
    if (row.config?.includes('search_path=pg_catalog, pg_temp') !== true) {
      findings.push(`${row.signature}: search path not pinned`);
    }
  }
  for (const signature of listed) findings.push(`${signature}: listed but not there`);
  return findings;
};
