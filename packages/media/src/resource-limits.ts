import { spawnSync } from 'node:child_process';

/** What a child may use: address space and size of one written file in bytes, processor time in seconds. */
export type ResourceLimits = {
  readonly memoryBytes: number;
  readonly fileBytes: number;
  readonly cpuSeconds: number;
};

export const defaultResources: ResourceLimits = {
  memoryBytes: 3 * 1024 ** 3,
  fileBytes: 1024 ** 3,
  cpuSeconds: 240,
};

// A constant text: what is run and its arguments come in as "$@", never as text. A limit a system lacks is passed over.
const limitingScript =
  'ulimit -v "$1" 2>/dev/null; ulimit -t "$2" 2>/dev/null; ulimit -f "$3" 2>/dev/null; ulimit -c 0 2>/dev/null; shift 3; exec "$@"';

/** The command that runs `command` under limits and, where the system allows it, without a network. */
export function limitedCommand(
  command: readonly string[],
  limits: ResourceLimits,
): readonly [string, ...string[]] {
  const [first = process.execPath, ...rest] = command;
  if (process.platform === 'win32') return [first, ...rest];
  const kibibytes = String(Math.floor(limits.memoryBytes / 1024));
  const blocks = String(Math.floor(limits.fileBytes / 512));
  const limited = [
    '/bin/sh',
    '-c',
    limitingScript,
    'sh',
    kibibytes,
    String(limits.cpuSeconds),
    blocks,
    first,
    ...rest,
  ];
  return withoutNetwork()
    ? ['unshare', '--map-root-user', '--net', '--', ...limited]
    : (limited as [string, ...string[]]);
}

let networkCanBeCut: boolean | undefined;

/** True when this system lets us start a process in a network of its own. Asked once. */
function withoutNetwork(): boolean {
  networkCanBeCut ??=
    process.platform === 'linux' &&
    spawnSync('unshare', ['--map-root-user', '--net', '--', 'true'], { stdio: 'ignore' }).status === 0;
  return networkCanBeCut;
}
