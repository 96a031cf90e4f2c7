/** One submission in so many is read before its ranking is shown; the coach is told. */
export const blindOneIn = 5;

/**
 * Whether it is a submission's turn to be read without the ranking: always the same for the same id.
 *
 * @param submissionId - a UUID; its random end decides
 * @throws RangeError when the end of the id is no hexadecimal number
 */
export function blindTurn(submissionId: string): boolean {
  const end = Number.parseInt(submissionId.slice(-8), 16);
  if (!Number.isInteger(end)) throw new RangeError('A submission is named by a UUID.');
  return end % blindOneIn === 0;
}
