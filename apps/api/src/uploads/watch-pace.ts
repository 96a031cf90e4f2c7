import type { Socket } from 'node:net';

export type Pace = { readonly everyMs: number; readonly bytesAtLeast: number };

/** A phone with one bar still sends a kilobyte a second; less than that for half a minute holds a place for nothing. */
export const slowestPace: Pace = { everyMs: 30_000, bytesAtLeast: 30_000 };

/**
 * Cuts a connection that sends too little: the upload can be resumed. While `waits` says that the sender waits for us,
 * nothing is held against it. @returns how to stop watching
 */
export const watchPace = (socket: Socket, pace: Pace, waits: () => boolean): (() => void) => {
  let before = socket.bytesRead;
  const timer = setInterval(() => {
    const sent = socket.bytesRead - before;
    before = socket.bytesRead;
    if (sent < pace.bytesAtLeast && waits()) socket.destroy();
  }, pace.everyMs);
  timer.unref();
  return () => clearInterval(timer);
};
