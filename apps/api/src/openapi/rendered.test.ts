import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { renderContracts } from './rendered.ts';

const contracts = new URL('../../../../packages/contracts/', import.meta.url);

it('is the document and the types kept in the tree; else run `npm run -w @ballfirst/api openapi`', {
  timeout: 30_000,
}, async () => {
  const { document, types } = await renderContracts();
  expect(await readFile(new URL('openapi.json', contracts), 'utf8')).toBe(document);
  expect(await readFile(new URL('src/generated-api.ts', contracts), 'utf8')).toBe(types);
});
