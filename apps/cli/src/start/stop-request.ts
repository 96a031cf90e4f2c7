const twiceMs = 1_500;

export type StopRequest = {
  /** Resolves with what asked for the end. */
  readonly asked: Promise<string>;
  readonly isAsked: () => boolean;
  /** Called when it is asked a second time: somebody does not want to wait. */
  readonly onImpatience: (act: () => void) => void;
};

/**
 * Listens for everything that means "stop": Ctrl-C, TERM, a closed terminal, and the death of the process that
 * started us. A TERM to npm ends npm and never reaches us: only the changed parent number tells.
 */
export function listenForStop(): StopRequest {
  const parent = process.ppid;
  let asked: string | undefined;
  let impatience: () => void = () => undefined;
  let resolve: (reason: string) => void = () => undefined;
  const promise = new Promise<string>((done) => {
    resolve = done;
  });
  let askedAtMs = 0;
  const ask = (reason: string) => {
    // A Ctrl-C reaches us twice, from the terminal and through npm: only a later one is a second one.
    if (asked !== undefined) return performance.now() - askedAtMs > twiceMs ? impatience() : undefined;
    asked = reason;
    askedAtMs = performance.now();
    resolve(reason);
  };
  for (const name of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(name, () => ask(name));
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    ask('the end of its parent');
  }, 250);
  watch.unref();
  return {
    asked: promise,
    isAsked: () => asked !== undefined,
    onImpatience: (act) => {
      impatience = act;
    },
  };
}
