import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { alone } from './build-lock.mjs';
import { buildStale, isFresh } from './build-stale.mjs';
import { installWhenStale } from './install.mjs';
import { isInstalled } from './installed.mjs';
import { Sentence, say } from './say.mjs';
import { describeTargets } from './targets.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

/** What must be built before a command can run. */
const needs = /** @type {const} */ ({
  start: ['client', 'cli', 'api', 'worker', 'site'],
  test: ['client', 'cli', 'api', 'worker', 'site'],
  bench: ['client', 'cli', 'api', 'worker', 'site'],
  build: ['client', 'cli', 'api', 'worker', 'site'],
  pictures: ['client', 'cli', 'api', 'worker', 'site'],
  verify: ['client', 'cli'],
  migrate: ['client', 'cli'],
});

/**
 * Installs and builds what is stale, then hands over to the command.
 * @param {string[]} argv command and its arguments
 */
export async function run(argv) {
  try {
    const [command = '', ...rest] = argv;
    if (!isCommand(command)) {
      throw new Sentence(`Say what to do: ${Object.keys(needs).join(', ')}.`);
    }
    await prepare(needsOnlyOurselves(command, rest) ? 'verify' : command, rest.includes('--force'));
    if (command === 'build') return say('built');
    const entry = pathToFileURL(join(root, 'apps', 'cli', 'dist', 'main.mjs')).href;
    const { main } = await import(entry);
    // Nothing that still waits for an answer may hold up the end.
    process.exit(await main({ root, command, args: rest }));
  } catch (error) {
    process.exitCode = 1;
    const told = error instanceof Sentence ? `ballfirst: ${error.message}` : error;
    console.error(told);
  }
}

/**
 * Tests other than journeys run from the sources.
 * @param {string} command
 * @param {string[]} args
 */
function needsOnlyOurselves(command, args) {
  const only = args[args.indexOf('--only') + 1] ?? '';
  return command === 'test' && args.includes('--only') && !only.includes('journeys');
}

/**
 * @param {keyof typeof needs} command
 * @param {boolean} force
 */
async function prepare(command, force) {
  const wanted = () => {
    const targets = describeTargets(root);
    return needs[command].map((name) => targets[name]);
  };
  const isForced = command === 'build' && force;
  // Nothing is written when nothing is to do: the folder may belong to somebody else.
  if (!isForced && isInstalled(root) && wanted().every((target) => isFresh(root, target))) return;
  await alone(root, async () => {
    await installWhenStale(root);
    await buildStale(root, wanted(), isForced);
  });
}

/**
 * @param {string} word
 * @returns {word is keyof typeof needs}
 */
function isCommand(word) {
  return Object.hasOwn(needs, word);
}
