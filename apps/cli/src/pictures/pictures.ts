import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { Sentence } from '../sentence.ts';
import { findBrowser } from '../test-run/find-browser.ts';

/**
 * `npm run pictures`: starts the service with its demo in a folder of its own and takes the README's pictures anew.
 *
 * @returns exit code
 */
export async function pictures(root: string): Promise<number> {
  const browser = findBrowser(process.env);
  if (browser === undefined) {
    throw new Sentence('No Chromium or Chrome was found; install one, or name it in CHROMIUM_PATH.');
  }
  const script = join(root, 'tests', 'pictures', 'take-pictures.ts');
  const child = spawn(process.execPath, ['--import', 'tsx', script], {
    cwd: root,
    env: { ...process.env, CHROMIUM_PATH: browser },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  return new Promise((resolve) => {
    child.on('error', () => resolve(1));
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
