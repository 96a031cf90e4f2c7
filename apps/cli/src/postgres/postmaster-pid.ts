/** What a running server writes into its data folder. */
export type PostmasterPid = { readonly pid: number; readonly port: number; readonly isReady: boolean };

/**
 * Reads `postmaster.pid`: line 1 the process, line 4 the port, line 8 the state (PostgreSQL documentation,
 * "Database File Layout"; state words from miscadmin.h).
 *
 * @returns undefined when the file is cut off or no such file
 */
export function parsePostmasterPid(text: string): PostmasterPid | undefined {
  const lines = text.split('\n');
  const pid = Number(lines[0]);
  if (!Number.isInteger(pid) || pid <= 0) return undefined;
  const port = Number(lines[3]);
  return { pid, port: Number.isInteger(port) ? port : 0, isReady: lines[7]?.trim() === 'ready' };
}
