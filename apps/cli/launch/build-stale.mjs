import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { contentHash } from './content-hash.mjs';
import { say, secondsSince } from './say.mjs';

/**
 * Builds the targets whose inputs changed since they were last built.
 * @param {string} root
 * @param {import('./targets.mjs').Target[]} targets in order
 * @param {boolean} [force] build them all
 */
export async function buildStale(root, targets, force = false) {
  for (const target of targets) {
    const inputs = contentHash(root, target.inputs);
    if (!force && isFresh(target, inputs)) continue;
    const begun = performance.now();
    say(`building ${target.name}`);
    await target.make();
    writeFileSync(target.record, inputs);
    say(`  built ${target.name} in ${secondsSince(begun)}`);
  }
}

/**
 * @param {import('./targets.mjs').Target} target
 * @param {string} inputs
 */
function isFresh(target, inputs) {
  return (
    existsSync(target.output) && existsSync(target.record) && readFileSync(target.record, 'utf8') === inputs
  );
}
