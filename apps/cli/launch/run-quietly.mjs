import { spawn } from 'node:child_process';
import { Sentence } from './say.mjs';

/**
 * Runs a Node script and shows its output only when it fails.
 * @param {string} cwd
 * @param {string[]} args script and arguments
 * @param {Record<string, string>} env added to our own
 * @returns {Promise<void>}
 */
export function runQuietly(cwd, args, env) {
  const child = spawn(process.execPath, args, {
    cwd,
    env: { ...process.env, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text) => {
      output += text;
    });
  }
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) return resolve();
      process.stderr.write(output);
      reject(new Sentence(`A build step failed (${args[0]?.split(/[\\/]/).at(-1)}): its words are above.`));
    });
  });
}
