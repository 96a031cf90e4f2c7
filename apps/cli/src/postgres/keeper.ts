import { spawn } from 'node:child_process';
import { signal } from '../processes.ts';

/**
 * What happens when we are killed outright. A shell waits for the end of a pipe that only our death closes; it gives
 * the other processes a moment to end by themselves, stops the server in order and clears our lock.
 */
const script = `
cat >/dev/null
sleep 1
if [ "$1" -gt 0 ]; then
  kill -INT "$1" 2>/dev/null
  n=0
  while kill -0 "$1" 2>/dev/null && [ $n -lt 100 ]; do sleep 0.1; n=$((n + 1)); done
  kill -QUIT "$1" 2>/dev/null
fi
if [ -n "$2" ] && [ "$(cat "$2" 2>/dev/null)" = "$3" ]; then rm -f "$2"; fi
if [ -n "$4" ]; then rm -rf "$4"; fi
`;

export type Keeper = { readonly dismiss: () => void };

/**
 * @param serverPid 0 when the database is not ours
 * @param lock file and content, removed only while it still holds that content
 * @param throwaway folder that is removed in the end (tests)
 */
export function hireKeeper(
  serverPid: number,
  lock: { readonly file: string; readonly token: string } = { file: '', token: '' },
  throwaway = '',
): Keeper {
  const args = [String(serverPid), lock.file, lock.token.trim(), throwaway];
  const child = spawn('/bin/sh', ['-c', script, 'ballfirst-keeper', ...args], {
    cwd: '/',
    detached: true,
    stdio: ['pipe', 'ignore', 'ignore'],
  });
  child.unref();
  child.on('error', () => undefined);
  child.stdin?.on('error', () => undefined);
  return {
    // The shell and its cat are one group.
    dismiss: () => {
      if (child.pid !== undefined) signal(-child.pid, 'SIGKILL');
    },
  };
}
