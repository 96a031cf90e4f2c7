import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';

export type Migration = { name: string; sql: string; checksum: string };

/** The migrations of a folder in Prisma's layout, in order of name; the checksum is the SHA-256 of the file in hex. */
export const readMigrations = async (folder: string): Promise<Migration[]> => {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  return Promise.all(
    names.map(async (name) => {
      const bytes = await readFile(join(folder, name, 'migration.sql'));
      return {
        name,
        sql: bytes.toString('utf8'),
        checksum: createHash('sha256').update(bytes).digest('hex'),
      };
    }),
  );
};
