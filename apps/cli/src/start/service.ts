import type { History } from '../demo/tell-history.ts';
import type { Lock } from '../home/lock.ts';
import type { Keeper } from '../postgres/keeper.ts';
import type { Server } from '../postgres/run-server.ts';
import type { Part } from '../supervise/run-part.ts';

/** What runs at the moment, filled while it starts, so that an end in the middle stops exactly that. */
export type Service = {
  isStopping: boolean;
  lock?: Lock;
  keeper?: Keeper;
  server?: Server;
  site?: Part;
  api?: Part;
  worker?: Part;
  history?: History;
};
