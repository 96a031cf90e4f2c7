/**
 * Why the migrations were not applied. `newer-database`: it holds a migration this program does not know; `edited`: a
 * file changed after it was applied; `failed`: an earlier run left one unfinished; `broken`: this one's SQL was refused.
 */
export type MigrationRefusalKind = 'newer-database' | 'edited' | 'failed' | 'broken';

export class MigrationRefusal extends Error {
  readonly kind: MigrationRefusalKind;
  /** The name of the migration's folder. */
  readonly migration: string;

  constructor(kind: MigrationRefusalKind, migration: string, cause?: unknown) {
    super(`${sentences[kind]} (${migration})`, cause === undefined ? {} : { cause });
    this.name = 'MigrationRefusal';
    this.kind = kind;
    this.migration = migration;
  }
}

const sentences: Readonly<Record<MigrationRefusalKind, string>> = {
  'newer-database': 'The database was made by a newer version of this program',
  edited: 'A migration was changed after it had been applied',
  failed: 'A migration failed earlier and was not resolved',
  broken: 'A migration could not be applied; nothing of it was kept',
};
