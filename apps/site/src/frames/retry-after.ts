/** A lost signal is waited out for about ten seconds, in s; then whoever asked is told that the clip did not load. */
export const retryAfterS = (attempts: number): number | null => (attempts < 5 ? attempts : null);
