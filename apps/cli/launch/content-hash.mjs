import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

const made = new Set(['node_modules', 'dist', '.next', '.turbo', 'generated', 'next-env.d.ts']);

/**
 * Every file under the given paths that a build could read, sorted; tests and what builds made are left out.
 * @param {string[]} paths files or folders; one that does not exist holds nothing
 * @returns {string[]}
 */
export function sourceFiles(paths) {
  return paths
    .flatMap((path) => {
      if (!existsSync(path)) return [];
      if (!statSync(path).isDirectory()) return [path];
      const below = readdirSync(path).filter((name) => !made.has(name) && !/\.test\.tsx?$/.test(name));
      return sourceFiles(below.map((name) => join(path, name)));
    })
    .sort();
}

/**
 * One hash over names (relative to `root`) and bytes: equal exactly when a build would read the same.
 * @param {string} root
 * @param {string[]} paths
 * @returns {string} sha256, hex
 */
export function contentHash(root, paths) {
  const hash = createHash('sha256');
  for (const file of sourceFiles(paths)) {
    const bytes = readFileSync(file);
    hash.update(`${relative(root, file).split(sep).join('/')}\0${bytes.length}\0`).update(bytes);
  }
  return hash.digest('hex');
}
