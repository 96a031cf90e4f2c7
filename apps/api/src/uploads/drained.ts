import type { IncomingMessage } from 'node:http';

const waitMs = 2_000;

/**
 * Lets the rest of a refused body go by, for a moment: an answer sent while bytes are still coming is lost on its way,
 * and the client would not learn why.
 */
export const drained = (request: IncomingMessage): Promise<void> =>
  new Promise((resolve) => {
    if (request.complete || request.destroyed) return resolve();
    const timer = setTimeout(resolve, waitMs);
    const end = (): void => {
      clearTimeout(timer);
      resolve();
    };
    request.once('end', end).once('close', end).once('error', end);
    request.resume();
  });
