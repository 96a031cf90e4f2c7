import { writeFile } from 'node:fs/promises';
import { renderContracts } from './rendered.ts';

const contracts = new URL('../../../../packages/contracts/', import.meta.url);
const { document, types } = await renderContracts();
await writeFile(new URL('openapi.json', contracts), document);
await writeFile(new URL('src/generated-api.ts', contracts), types);
