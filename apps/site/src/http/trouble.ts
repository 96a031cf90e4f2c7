import { AnsweredProblem } from '@ballfirst/contracts/client';
import type { ProblemCode } from '@ballfirst/contracts/problems';
import { shellWords } from '../words/shell.ts';

/** What went wrong, for a person. `code` is null when nothing was answered. */
export type Trouble = {
  readonly code: ProblemCode | null;
  readonly words: string;
  readonly fields: readonly { path: string; message: string }[];
};

export const troubleOf = (error: unknown): Trouble =>
  error instanceof AnsweredProblem
    ? { code: error.code, words: error.message, fields: error.fields }
    : { code: null, words: shellWords.noConnection, fields: [] };
