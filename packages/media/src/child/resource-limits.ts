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
  const limited: [string, ...string[]] = [
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
  const apart = networkCutter();
  return apart === null ? limited : [apart, ...cutNetwork, ...limited];
}

const cutNetwork = ['--map-root-user', '--net', '--'];
let cutter: string | null | undefined;

/** The tool that starts a process in a network of its own, which has no way out; null where it is not allowed. */
function networkCutter(): string | null {
  if (cutter !== undefined) return cutter;
  const works = (tool: string) =>
    spawnSync(tool, [...cutNetwork, '/bin/true'], { stdio: 'ignore' }).status === 0;
  cutter = ['/usr/bin/unshare', '/bin/unshare'].find(works) ?? null;
  return cutter;
}
