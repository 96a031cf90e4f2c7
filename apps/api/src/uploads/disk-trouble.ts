import { ProblemError } from '@ballfirst/contracts/problems';

/** What a full or exhausted machine is to the outside; anything else stays what it was. */
export const diskTrouble = (error: unknown): unknown => {
  const code: unknown = error instanceof Error ? Reflect.get(error, 'code') : undefined;
  if (code === 'ENOSPC' || code === 'EDQUOT') return new ProblemError('no-room');
  if (code === 'EMFILE' || code === 'ENFILE') return new ProblemError('busy');
  return error;
};
