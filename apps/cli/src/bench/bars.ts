/** What a figure must reach: its ratio to the baseline, or its value when `of` says so; from at least `n` readings. */
export type Bar = {
  readonly of?: 'value';
  readonly max?: number;
  readonly min?: number;
  readonly n?: number;
};

/** The figures each bench must show, and their bars. A figure that is not shown counts as missed. */
export const bars: Readonly<Record<string, Readonly<Record<string, Bar>>>> = {
  'inbox-page': {
    'sql-vs-plain': { max: 1.3, n: 200 },
    'api-vs-fastify-pg': { min: 0.6 },
    'p99-ms': { of: 'value', max: 25, n: 500 },
    'page1000-vs-page1': { max: 1.2 },
    'rows-x10': { max: 1.15 },
  },
  'open-submission': { 'p99-ms': { of: 'value', max: 50, n: 500 } },
  claim: {
    'double-claims': { of: 'value', max: 0, n: 500 },
    'p99-ms': { of: 'value', max: 50, n: 500 },
  },
  upload: {
    'vs-put-fsync': { min: 0.6 },
    'peak-rss-mib': { of: 'value', max: 250 },
    'lost-bytes-after-kill': { of: 'value', max: 0, n: 5 },
  },
  prepare: {
    'cpu-vs-ffmpeg': { max: 1.5, n: 3 },
    'cpu-vs-ffmpeg-of-the-system': { max: 1.05, n: 3 },
  },
  step: {
    'wrong-frames': { of: 'value', max: 0, n: 240 },
    'forward-p95-ms': { of: 'value', max: 16.7, n: 200 },
    'backward-p95-ms': { of: 'value', max: 75, n: 200 },
  },
  diagnosis: {
    'coverage-min': { of: 'value', min: 0.93, n: 2000 },
    'coverage-max': { of: 'value', max: 0.97, n: 2000 },
    'first-vs-oracle': { min: 0.95, n: 400 },
    'false-first': { of: 'value', max: 0.1, n: 200 },
    'hip-shift-width-mm': { of: 'value', max: 25, n: 400 },
  },
  measure: { 'p95-ms': { of: 'value', max: 2, n: 500 } },
  reply: {
    'fat-actions': { of: 'value', max: 45 },
    'unmarked-actions': { of: 'value', max: 12 },
    'film-again-actions': { of: 'value', max: 5 },
  },
  pages: {
    'form-js-kb': { of: 'value', max: 180 },
    'inbox-lcp-ms': { of: 'value', max: 1_000, n: 5 },
    'inbox-inp-ms': { of: 'value', max: 100, n: 5 },
  },
  start: {
    'cold-ms': { of: 'value', max: 10_000 },
    'warm-ms': { of: 'value', max: 4_000 },
    'node-modules-mib': { of: 'value', max: 1_300 },
    'api-rss-mib': { of: 'value', max: 150 },
  },
};
