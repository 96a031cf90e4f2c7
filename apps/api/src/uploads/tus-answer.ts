import { problems } from '@ballfirst/contracts/problems';
import type { Log } from '@ballfirst/services/ports';
import { problemOf } from '../door/problem-of.ts';

type TusAnswer = { status_code: number; body: string };

const codeOf = (error: object): unknown => Reflect.get(error, 'code');

/** What a failure inside an upload is to the outside: never a path, never a word of the system. */
export const tusAnswer = (error: Error | TusAnswer, log: Log, requestId: string): TusAnswer => {
  if ('status_code' in error && 'body' in error) return { status_code: error.status_code, body: error.body };
  log.error({ requestId, error }, 'an upload failed');
  const code = codeOf(error);
  if (code === 'ENOSPC' || code === 'EDQUOT') {
    return {
      status_code: 507,
      body: 'There is no room for more video just now. What has arrived is kept.\n',
    };
  }
  if (code === 'EMFILE' || code === 'ENFILE') return { status_code: 503, body: `${problems.busy[1]}\n` };
  const found = problemOf(error);
  return { status_code: found.status, body: `${found.detail}\n` };
};
