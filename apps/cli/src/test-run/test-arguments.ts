import { Sentence } from '../sentence.ts';

export const projects = ['unit', 'integration', 'schema', 'journeys'] as const;
export type Project = (typeof projects)[number];

export type TestArguments = {
  readonly projects: readonly Project[];
  /** `bin` folder of an installed PostgreSQL to test on instead of the embedded one. */
  readonly postgresBin: string | undefined;
  /** Parts of paths: only test files whose path holds one of them. */
  readonly filters: readonly string[];
};

/**
 * `npm test -- [--only unit,schema] [--postgres-bin FOLDER] [PATH ...]`
 *
 * @throws Sentence for an option or a project that does not exist
 */
export function readTestArguments(args: readonly string[]): TestArguments {
  const left = [...args];
  const filters: string[] = [];
  let chosen: readonly Project[] = projects;
  let postgresBin: string | undefined;
  for (let next = left.shift(); next !== undefined; next = left.shift()) {
    if (next === '--only') chosen = (left.shift() ?? '').split(',').map(toProject);
    else if (next === '--postgres-bin') postgresBin = left.shift();
    else if (next.startsWith('-')) throw new Sentence(`test knows --only and --postgres-bin, not ${next}.`);
    else filters.push(next);
  }
  return { projects: chosen, postgresBin, filters };
}

function toProject(word: string): Project {
  const found = projects.find((project) => project === word);
  if (found === undefined) throw new Sentence(`There are tests of ${projects.join(', ')}, not of "${word}".`);
  return found;
}
