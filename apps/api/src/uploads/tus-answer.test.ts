import { ProblemError } from '@ballfirst/contracts/problems';
import { silentLog } from '@ballfirst/edges/log';
import { expect, it } from 'vitest';
import { tusAnswer } from './tus-answer.ts';

const failure = (code: string) =>
  Object.assign(new Error(`${code}: write '/srv/media/a/clips/b/original'`), { code });

it.each([
  ['ENOSPC', 507],
  ['EDQUOT', 507],
  ['EMFILE', 503],
  ['EIO', 500],
  ['ECONNREFUSED', 503],
])('%s is %i, without the path', (code, status) => {
  const answer = tusAnswer(failure(code), silentLog, 'r1');
  expect(answer.status_code).toBe(status);
  expect(answer.body).not.toMatch(/srv|original|EIO|ENOSPC/);
});

it('keeps the sentence of a verb and the answers of the protocol', () => {
  expect(tusAnswer(new ProblemError('clip-not-yours'), silentLog, 'r1').status_code).toBe(422);
  const conflict = { status_code: 409, body: 'Upload-Offset conflict\n' };
  expect(tusAnswer(conflict, silentLog, 'r1')).toEqual(conflict);
});
