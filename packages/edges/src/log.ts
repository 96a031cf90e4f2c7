import type { Log } from '@ballfirst/services/ports';

type Sink = { write(line: string): unknown };

/** Errors as name, message, code and stack; dates as instants; everything else as it is. */
const plain = (_key: string, value: unknown): unknown => {
  if (typeof value === 'bigint') return value.toString();
  if (!(value instanceof Error)) return value;
  const code = 'code' in value ? value.code : undefined;
  return { name: value.name, message: value.message, code, stack: value.stack, cause: value.cause };
};

/** One JSON line a message. Callers give ids, never names, addresses, tokens or notes. */
export const jsonLog = (process: string, sink: Sink, now: () => Date = () => new Date()): Log => {
  const line =
    (level: 'info' | 'warn' | 'error') =>
    (fields: Record<string, unknown>, message: string): void => {
      sink.write(
        `${JSON.stringify({ at: now().toISOString(), level, process, message, ...fields }, plain)}\n`,
      );
    };
  return { info: line('info'), warn: line('warn'), error: line('error') };
};

export const silentLog: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };
