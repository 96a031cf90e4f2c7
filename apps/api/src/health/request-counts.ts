/** Counts of answered requests by method, route pattern and kind of status; never by address, id or person. */
export type RequestCounts = {
  add(request: { method: string; route: string; status: number; seconds: number }): void;
  /** Prometheus text exposition format 0.0.4. */
  text(): string;
};

type Count = { requests: number; seconds: number };

export const createRequestCounts = (): RequestCounts => {
  const counts = new Map<string, Count>();
  return {
    add: ({ method, route, status, seconds }) => {
      const labels = `method="${method}",route="${route}",status="${Math.floor(status / 100)}xx"`;
      const count = counts.get(labels) ?? { requests: 0, seconds: 0 };
      counts.set(labels, { requests: count.requests + 1, seconds: count.seconds + seconds });
    },
    text: () => {
      const rows = [...counts].sort(([a], [b]) => (a < b ? -1 : 1));
      return [
        '# HELP ballfirst_http_requests_total Answered requests.',
        '# TYPE ballfirst_http_requests_total counter',
        ...rows.map(([labels, it]) => `ballfirst_http_requests_total{${labels}} ${it.requests}`),
        '# HELP ballfirst_http_request_seconds_total Seconds spent on them.',
        '# TYPE ballfirst_http_request_seconds_total counter',
        ...rows.map(
          ([labels, it]) => `ballfirst_http_request_seconds_total{${labels}} ${it.seconds.toFixed(6)}`,
        ),
      ].join('\n');
    },
  };
};
