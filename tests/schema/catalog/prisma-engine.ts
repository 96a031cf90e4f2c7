import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PrismaPg } from '@prisma/adapter-pg';
import { bindSqlAdapterFactory } from '@prisma/driver-adapter-utils';
import * as bindings from '@prisma/schema-engine-wasm/schema_engine_bg';

const require = createRequire(import.meta.url);

type Exports = WebAssembly.Exports & { __wbindgen_start: () => void };

/** Loads Prisma's schema engine from its WebAssembly: the native one would have to be downloaded. */
const loadEngine = async (): Promise<typeof bindings> => {
  const path = require
    .resolve('@prisma/schema-engine-wasm')
    .replace(/schema_engine\.js$/, 'schema_engine_bg.wasm');
  const imports = { './schema_engine_bg.js': bindings as unknown as WebAssembly.ModuleImports };
  const { instance } = await WebAssembly.instantiate(await readFile(path), imports);
  const exports = instance.exports as Exports;
  bindings.__wbg_set_wasm(exports);
  exports.__wbindgen_start();
  return bindings;
};

const filters = { externalTables: [], externalEnums: [] };

/**
 * The SQL that Prisma would still run to bring a database to `schema.prisma`; `from: 'empty'` leaves the database aside
 * and gives the SQL of the whole schema. Discrete connection settings: a connection string would win over the adapter's.
 */
export const prismaDiff = async (
  url: string,
  schemaPath: string,
  from: 'database' | 'empty',
): Promise<string> => {
  const { SchemaEngine } = await loadEngine();
  const at = new URL(url);
  const adapter = new PrismaPg({
    host: at.hostname,
    port: Number(at.port),
    user: at.username,
    password: decodeURIComponent(at.password),
    database: at.pathname.slice(1),
    max: 1,
  });
  const content = await readFile(schemaPath, 'utf8');
  const files = [{ path: schemaPath, content }];
  const engine = await SchemaEngine.new(
    { datamodels: [[schemaPath, content]] },
    () => undefined,
    bindSqlAdapterFactory(adapter),
  );
  try {
    const result = await engine.diff({
      from: from === 'empty' ? { tag: 'empty' } : { tag: 'schemaDatasource', files, configDir: '.' },
      to: { tag: 'schemaDatamodel', files },
      script: true,
      exitCode: null,
      filters,
    });
    return result.stdout ?? '';
  } finally {
    engine.free();
  }
};
