import { Sentence } from './sentence.ts';

/**
 * Turns what the system refused into one sentence that says what to do; a failure nobody foresaw stays itself.
 *
 * @param failure what was thrown
 * @param home the data folder in use, named in the sentence
 */
export function explainFailure(failure: unknown, home: string): unknown {
  if (failure instanceof Sentence || !(failure instanceof Error)) return failure;
  const code = 'code' in failure ? String(failure.code) : '';
  const full = code === 'ENOSPC' || code === 'EDQUOT' || code === '53100' || isDiskFullText(failure.message);
  if (full) return new Sentence(`The disk that holds ${home} is full: free some space, then start again.`);
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') {
    return new Sentence(
      `The data folder ${home} cannot be written by this user: set BALLFIRST_HOME to one that can.`,
    );
  }
  if (code === 'ENOTDIR') {
    return new Sentence(`${home} lies below a file: set BALLFIRST_HOME to a folder.`);
  }
  if (code === 'EMFILE' || code === 'ENFILE') {
    return new Sentence('This machine has no file handles left: close some programs, or raise the limit.');
  }
  return failure;
}

/** The words libc has for it, which initdb, postgres and npm pass on. */
export function isDiskFullText(text: string): boolean {
  return /no space left on device|disk quota exceeded|ENOSPC/i.test(text);
}
