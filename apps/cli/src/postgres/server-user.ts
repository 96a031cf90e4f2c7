import { execFileSync } from 'node:child_process';
import { statSync } from 'node:fs';

/** Whom the server runs as. PostgreSQL refuses root, so root lends it another user. */
export type ServerUser = { readonly uid: number; readonly gid: number };

/**
 * @param cluster the data folder of the server; once it exists, its owner decides
 * @returns undefined when we are not root: the server then runs as we do
 */
export function chooseServerUser(cluster: string): ServerUser | undefined {
  if (process.getuid?.() !== 0) return undefined;
  return ownerOf(cluster) ?? lookUp('postgres') ?? addUser('postgres') ?? lookUp('nobody');
}

function ownerOf(folder: string): ServerUser | undefined {
  const found = statSync(folder, { throwIfNoEntry: false });
  return found === undefined || found.uid === 0 ? undefined : { uid: found.uid, gid: found.gid };
}

function lookUp(name: string): ServerUser | undefined {
  try {
    const id = (flag: string) =>
      Number(execFileSync('id', [flag, name], { stdio: ['ignore', 'pipe', 'ignore'] }));
    return { uid: id('-u'), gid: id('-g') };
  } catch {
    return undefined;
  }
}

function addUser(name: string): ServerUser | undefined {
  try {
    execFileSync('useradd', ['--system', '--user-group', '--no-create-home', name], { stdio: 'ignore' });
  } catch {
    return undefined;
  }
  return lookUp(name);
}
