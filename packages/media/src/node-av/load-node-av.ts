export type NodeAv = typeof import('node-av/lib') & typeof import('node-av/constants');

type WithResolvers = {
  withResolvers?: () => { promise: Promise<unknown>; resolve: unknown; reject: unknown };
};

/** Node 20 lacks `Promise.withResolvers`; without it node-av reads no packets and says nothing. */
function addWithResolvers(): void {
  const target = Promise as unknown as WithResolvers;
  target.withResolvers ??= () => {
    let resolve: unknown;
    let reject: unknown;
    const promise = new Promise<unknown>((yes, no) => {
      resolve = yes;
      reject = no;
    });
    return { promise, resolve, reject };
  };
}

let loaded: Promise<NodeAv> | undefined;

/**
 * The embedded FFmpeg, an optional dependency.
 *
 * @throws Error when it is not installed for this machine
 */
export function loadNodeAv(): Promise<NodeAv> {
  addWithResolvers();
  loaded ??= Promise.all([import('node-av/lib'), import('node-av/constants')]).then(([lib, constants]) => {
    lib.Log.setLevel(constants.AV_LOG_FATAL);
    return { ...lib, ...constants };
  });
  return loaded;
}
