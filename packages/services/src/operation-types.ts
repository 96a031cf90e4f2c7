import type { OperationId, operations } from '@ballfirst/contracts/http/operations';
import type { z } from 'zod';
import type { Context } from './context.ts';

type Part<K extends OperationId, P extends 'params' | 'query' | 'body'> = (typeof operations)[K] extends {
  readonly [key in P]: infer S extends z.ZodType;
}
  ? z.output<S>
  : unknown;
/** If-Match, as a number: the version the caller changed. */
type Version<K extends OperationId> = (typeof operations)[K] extends { readonly guarded: true }
  ? { readonly version: number }
  : unknown;

/** What an operation gives its verb: path, query and body in one object, and `version` where If-Match is asked for. */
export type Input<K extends OperationId> = Part<K, 'params'> &
  Part<K, 'query'> &
  Part<K, 'body'> &
  Version<K>;
export type Reply<K extends OperationId> = z.input<(typeof operations)[K]['reply']>;

/** The one argument of every verb of the API. */
export type Call<K extends OperationId> = { readonly ctx: Context; readonly input: Input<K> };
