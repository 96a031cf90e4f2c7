import { type Tx, withAcademy } from '@ballfirst/db/with-academy';
import type { Context } from './context.ts';

/** Runs a verb's work in the one transaction of its academy, or in the open one of its context. */
export const inTransaction = <T>(ctx: Context, work: (tx: Tx) => Promise<T>): Promise<T> =>
  ctx.tx === undefined ? withAcademy(ctx.resources.db, ctx.academyId, work) : work(ctx.tx);
