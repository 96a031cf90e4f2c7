import { expect, it } from 'vitest';
import { jsonLog } from './log.ts';

it('writes one JSON line a message, with errors and big numbers readable', () => {
  const lines: string[] = [];
  const log = jsonLog('api', { write: (line) => lines.push(line) }, () => new Date(0));
  log.error({ requestId: 'r1', error: new TypeError('no'), bytes: 5n }, 'failed');
  expect(lines).toHaveLength(1);
  const { error, ...rest } = JSON.parse(lines[0] ?? '');
  expect(rest).toEqual({
    at: '1970-01-01T00:00:00.000Z',
    level: 'error',
    process: 'api',
    message: 'failed',
    requestId: 'r1',
    bytes: '5',
  });
  expect(error).toMatchObject({ name: 'TypeError', message: 'no' });
});
