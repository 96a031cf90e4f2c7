import { bench } from './bench/bench.ts';
import { migrate } from './database/migrate.ts';
import { pictures } from './pictures/pictures.ts';
import { Sentence } from './sentence.ts';
import { start } from './start/start.ts';
import { test } from './test-run/test.ts';
import { verify } from './verify/verify.ts';

export type Call = { readonly root: string; readonly command: string; readonly args: readonly string[] };

/**
 * What the launcher calls when everything is installed and built.
 *
 * @returns exit code
 */
export async function main({ root, command, args }: Call): Promise<number> {
  try {
    return await run(root, command, args);
  } catch (error) {
    if (error instanceof Sentence) process.stderr.write(`ballfirst: ${error.message}\n`);
    else console.error(error);
    return 1;
  }
}

async function run(root: string, command: string, args: readonly string[]): Promise<number> {
  switch (command) {
    case 'migrate':
      return migrate(root, process.env);
    case 'start':
      return start(root, args);
    case 'test':
      return test(root, args);
    case 'verify':
      return verify(root);
    case 'bench':
      return bench(root, args);
    case 'pictures':
      return pictures(root);
    default:
      throw new Sentence(`There is no command ${command}.`);
  }
}
