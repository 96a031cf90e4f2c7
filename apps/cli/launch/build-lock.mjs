import { readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as after } from 'node:timers/promises';
import { say } from './say.mjs';

const beatMs = 2_000;
const silentMs = 60_000;

/**
 * Lets one launcher of this folder install and build at a time; the others wait and find the work done.
 * @template T
 * @param {string} root
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function alone(root, work) {
  const lock = join(root, '.building');
  for (let waited = 0; !take(lock); waited += 1) {
    if (waited === 5) say('waiting for another copy that is building in this folder');
    await after(200);
  }
  const beat = setInterval(() => utimesSync(lock, new Date(), new Date()), beatMs);
  try {
    return await work();
  } finally {
    clearInterval(beat);
    rmSync(lock, { force: true });
  }
}

/** @param {string} lock */
function take(lock) {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code !== 'EEXIST') throw error;
    if (isLeftOver(lock)) rmSync(lock, { force: true });
    return false;
  }
}

/**
 * The holder is gone, or is another process that was given its number and never touches the file.
 * @param {string} lock
 */
function isLeftOver(lock) {
  try {
    if (Date.now() - statSync(lock).mtimeMs > silentMs) return true;
    const holder = Number(readFileSync(lock, 'utf8'));
    if (holder > 0) process.kill(holder, 0);
    return isUnburied(holder);
  } catch (error) {
    return /** @type {NodeJS.ErrnoException} */ (error).code === 'ESRCH';
  }
}

/**
 * Ended, and only waiting for its parent to take note (Linux).
 * @param {number} pid
 */
function isUnburied(pid) {
  try {
    return / Z /.test(readFileSync(`/proc/${pid}/stat`, 'utf8'));
  } catch {
    return false;
  }
}
