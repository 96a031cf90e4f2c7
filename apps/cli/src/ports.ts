import { createServer } from 'node:net';

/**
 * Tries to listen there and lets go again.
 *
 * @returns undefined when a server could listen there now, else the system's code (`EADDRINUSE`, `EACCES`, ...)
 */
export function whyNotFree(port: number, host = '127.0.0.1'): Promise<string | undefined> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? 'unknown'));
    probe.listen({ port, host, exclusive: true }, () => probe.close(() => resolve(undefined)));
  });
}

/** A port of the system's choice that nobody listens on at this moment. */
export function freePort(host = '127.0.0.1'): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen({ port: 0, host, exclusive: true }, () => {
      const address = probe.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });
}
