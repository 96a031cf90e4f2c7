/** Prisma 7 sends the parts of an include side by side on one connection, which pg 8 queues and pg 9 will refuse. */
const knownOfPrisma = /client\.query\(\) when the client is already executing/;

/** Shows warnings as Node does, but for the one a person at the terminal can do nothing about. */
export function showOwnWarnings(): void {
  process.removeAllListeners('warning');
  process.on('warning', (warning) => {
    if (!knownOfPrisma.test(warning.message)) process.stderr.write(`${warning.stack ?? warning.message}\n`);
  });
}
