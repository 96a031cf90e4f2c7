import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { PrismaPg } from '@prisma/adapter-pg';
import {
  bindMigrationAwareSqlAdapterFactory,
  ColumnTypeEnum,
  type SqlDriverAdapter,
  type SqlMigrationAwareDriverAdapterFactory,
  type SqlQuery,
  type SqlResultSet,
} from '@prisma/driver-adapter-utils';
import * as bindings from '@prisma/schema-engine-wasm/schema_engine_bg';
import pg from 'pg';

const require = createRequire(import.meta.url);

type Exports = WebAssembly.Exports & { __wbindgen_start: () => void };

/** Loads Prisma's schema engine from its WebAssembly: the native one would have to be downloaded. */
const loadBindings = async (): Promise<typeof bindings> => {
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

let loading: Promise<typeof bindings> | undefined;

/** OIDs of pg_type: the engine reads the catalog's one-letter "char" columns, which the adapter does not know. */
const charOid = 18;
const textOid = 25;

type Query = (query: pg.QueryConfig) => Promise<pg.QueryResult>;

/** An adapter over one connection that lets "char" through as text and tells the engine that it is a character. */
const openAdapter = async (url: string) => {
  const pool = new pg.Pool({ connectionString: url, max: 1 });
  let letters = new Set<number>();
  const ask: Query = pool.query.bind(pool);
  const answer: Query = async (query) => {
    const result = await ask(query);
    letters = new Set(result.fields.flatMap((field, i) => (field.dataTypeID === charOid ? [i] : [])));
    for (const i of letters) Object.assign(result.fields[i] ?? {}, { dataTypeID: textOid });
    return result;
  };
  const factory = new PrismaPg(Object.assign(pool, { query: answer }));
  const connect = async (): Promise<SqlDriverAdapter> => {
    const adapter = await factory.connect();
    const read = adapter.queryRaw.bind(adapter);
    const queryRaw = async (query: SqlQuery): Promise<SqlResultSet> => {
      const result = await read(query);
      const columnTypes = result.columnTypes.map((type, i) =>
        letters.has(i) ? ColumnTypeEnum.Character : type,
      );
      return { ...result, columnTypes };
    };
    // The adapter cuts a script at every semicolon, inside function bodies too; the native engine sends it whole.
    const executeScript = async (script: string): Promise<void> => {
      await ask({ text: script });
    };
    return Object.assign(adapter, { queryRaw, executeScript });
  };
  const bound: SqlMigrationAwareDriverAdapterFactory = {
    provider: factory.provider,
    adapterName: factory.adapterName,
    connect,
    connectToShadowDb: () => Promise.reject(new Error('no shadow database here')),
  };
  return { factory: bound, close: () => pool.end() };
};

/** Lets Prisma's schema engine work on a database. `files` is the schema it compares with. */
export const withPrismaEngine = async <T>(
  url: string,
  schemaPath: string,
  work: (engine: bindings.SchemaEngine, files: { path: string; content: string }[]) => Promise<T>,
): Promise<T> => {
  loading ??= loadBindings();
  const { SchemaEngine } = await loading;
  const content = await readFile(schemaPath, 'utf8');
  const options = { datamodels: [[schemaPath, content]] as [string, string][] };
  const adapter = await openAdapter(url);
  const engine = await SchemaEngine.new(
    options,
    () => undefined,
    bindMigrationAwareSqlAdapterFactory(adapter.factory),
  );
  try {
    return await work(engine, [{ path: schemaPath, content }]);
  } finally {
    engine.free();
    await adapter.close();
  }
};
