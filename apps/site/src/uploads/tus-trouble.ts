import { DetailedError } from 'tus-js-client';
import { shellWords } from '../words/shell.ts';

const sentenceOf = (body: string): string | null => {
  try {
    const parsed: unknown = JSON.parse(body);
    if (
      typeof parsed === 'object' &&
      parsed !== null &&
      'detail' in parsed &&
      typeof parsed.detail === 'string'
    ) {
      return parsed.detail;
    }
  } catch {
    return null;
  }
  return null;
};

/** Why an upload stopped: `status` is 0 when nothing was answered (no signal). */
export const tusTrouble = (error: Error): { status: number; words: string } => {
  const answer = error instanceof DetailedError ? error.originalResponse : null;
  if (answer === null) return { status: 0, words: shellWords.noConnection };
  return { status: answer.getStatus(), words: sentenceOf(answer.getBody()) ?? shellWords.failed.text };
};
