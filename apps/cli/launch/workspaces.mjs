import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {{ name: string, folder: string, uses: string[] }} Workspace a member of this repository and the
 * members it names as dependencies
 */

/**
 * @param {string} root
 * @returns {Map<string, Workspace>} by package name
 */
export function readWorkspaces(root) {
  const found = new Map();
  for (const group of ['apps', 'packages']) {
    for (const name of readdirSync(join(root, group))) {
      const file = join(root, group, name, 'package.json');
      if (!existsSync(file)) continue;
      const json = JSON.parse(readFileSync(file, 'utf8'));
      const uses = Object.keys(json.dependencies ?? {}).filter((used) => used.startsWith('@ballfirst/'));
      found.set(json.name, { name: json.name, folder: join(root, group, name), uses });
    }
  }
  return found;
}

/**
 * The folders of a workspace and of everything it uses, directly or not.
 * @param {Map<string, Workspace>} workspaces
 * @param {string} name
 * @returns {string[]}
 */
export function closureFolders(workspaces, name) {
  const seen = new Set();
  const waiting = [name];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    waiting.push(...(workspaces.get(next)?.uses ?? []));
  }
  return [...seen].flatMap((member) => workspaces.get(member)?.folder ?? []).sort();
}
