import { defineConfig } from 'prisma/config';

// Prisma wants to download its schema engine; generate, validate and format run without it once a file stands in.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath;

export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  datasource: { url: process.env.DATABASE_OWNER_URL ?? 'postgresql://owner@127.0.0.1:5432/ballfirst' },
});
