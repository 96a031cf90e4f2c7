import { monitorEventLoopDelay } from 'node:perf_hooks';

/** What this process itself can say, in Prometheus text: since when it runs, its memory, how late its loop is. */
export const createProcessGauges = () => {
  const delay = monitorEventLoopDelay({ resolution: 20 });
  delay.enable();
  const gauge = (name: string, help: string, value: number): string =>
    `# HELP ${name} ${help}\n# TYPE ${name} gauge\n${name} ${value}`;
  return {
    stop: () => delay.disable(),
    text: (parts: { database: { total: number; idle: number; waiting: number } }): string =>
      [
        gauge('ballfirst_process_uptime_seconds', 'Seconds since the start.', Math.round(process.uptime())),
        gauge('ballfirst_process_memory_bytes', 'Resident memory.', process.memoryUsage.rss()),
        gauge(
          'ballfirst_event_loop_delay_p99_seconds',
          'Lateness of the event loop.',
          // Before the first sample it is no number; below a microsecond it is nothing.
          Number((delay.percentile(99) / 1e9 || 0).toFixed(6)),
        ),
        gauge('ballfirst_database_connections', 'Connections open.', parts.database.total),
        gauge('ballfirst_database_connections_idle', 'Of these idle.', parts.database.idle),
        gauge('ballfirst_database_waiting', 'Requests waiting for a connection.', parts.database.waiting),
      ].join('\n'),
  };
};
