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
    if (!force && isBuilt(target, inputs)) continue;
    const begun = performance.now();
    say(`building ${target.name}`);
    await target.make();
    writeFileSync(target.record, inputs);
    say(`  built ${target.name} in ${secondsSince(begun)}`);
  }
}

/**
 * @param {string} root
 * @param {import('./targets.mjs').Target} target
 */
export function isFresh(root, target) {
  return existsSync(target.record) && isBuilt(target, contentHash(root, target.inputs));
}

/**
 * @param {import('./targets.mjs').Target} target
 * @param {string} inputs
 */
function isBuilt(target, inputs) {
  return (
    existsSync(target.output) && existsSync(target.record) && readFileSync(target.record, 'utf8') === inputs
  );
}
