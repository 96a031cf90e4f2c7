/** What the global set-up tells the test files: the server and the template that each file clones. */
export type ProvidedDatabase = { superuserUrl: string; template: string };

declare module 'vitest' {
  export interface ProvidedContext {
    ballfirstDatabase: ProvidedDatabase;
  }
}
