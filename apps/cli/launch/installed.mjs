import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * @typedef {{ version?: string, resolved?: string, link?: boolean, optional?: boolean, peer?: boolean }} LockedPackage
 * @typedef {{ packages?: Record<string, LockedPackage> }} Lock
 */

/** @param {string} root */
const recordFile = (root) => join(root, 'node_modules', '.ballfirst-lock');

/**
 * What was installed must have been installed for this lock file and this kind of machine.
 * @param {string} root
 */
function fingerprint(root) {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const machine = `${process.platform}-${process.arch}`;
  return createHash('sha256').update(lock).update(machine).digest('hex');
}

/**
 * Whether npm's own record of `node_modules` holds every package the lock file demands, in that version.
 * Optional packages may be absent: they are for other machines.
 * @param {Lock} wanted package-lock.json
 * @param {Lock} present node_modules/.package-lock.json
 */
export function holdsAll(wanted, present) {
  return Object.entries(wanted.packages ?? {}).every(([path, entry]) => {
    if (!path.includes('node_modules/')) return true;
    const there = present.packages?.[path];
    if (there === undefined) return entry.optional === true;
    return entry.link === true || there.version === entry.version;
  });
}

/**
 * @param {string} root
 * @returns {boolean} true when nothing has to be installed
 */
export function isInstalled(root) {
  if (process.env.BALLFIRST_SKIP_INSTALL === '1') return true;
  const hidden = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(hidden)) return false;
  const record = recordFile(root);
  if (existsSync(record) && readFileSync(record, 'utf8') === fingerprint(root)) return true;
  const wanted = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  if (!holdsAll(wanted, JSON.parse(readFileSync(hidden, 'utf8')))) return false;
  recordInstalled(root);
  return true;
}

/** @param {string} root */
export function recordInstalled(root) {
  writeFileSync(recordFile(root), fingerprint(root));
}
