import { spawn } from 'node:child_process';
import { isInstalled, recordInstalled } from './installed.mjs';
import { Sentence, say, secondsSince } from './say.mjs';

/**
 * Runs `npm ci` when `node_modules` is missing or does not hold what the lock file asks for.
 * @param {string} root
 */
export async function installWhenStale(root) {
  if (isInstalled(root)) return;
  const begun = performance.now();
  say('installing packages (the first time takes about a minute)');
  const beat = setInterval(() => say(`  still installing (${secondsSince(begun)})`), 15_000);
  const code = await runNpmCi(root).finally(() => clearInterval(beat));
  if (code !== 0) {
    throw new Sentence(
      'The packages could not be installed: npm says why above; the network is needed once.',
    );
  }
  recordInstalled(root);
  say(`  installed in ${secondsSince(begun)}`);
}

/**
 * @param {string} root
 * @returns {Promise<number>} exit code
 */
function runNpmCi(root) {
  const flags = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
  const own = process.env.npm_execpath;
  const [command, args] = own?.endsWith('.js') ? [process.execPath, [own, ...flags]] : ['npm', flags];
  const child = spawn(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  return new Promise((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
