import type { z } from 'zod';

export type Who = 'anyone' | 'signed-in' | 'student' | 'coach' | 'manager';

/**
 * One HTTP operation: the single source for the API's routes, the OpenAPI document and the access matrix.
 * `creates` asks for an Idempotency-Key; `guarded` asks for If-Match and answers with an ETag.
 * Managers may do what coaches may; `student` means the student who owns the thing.
 */
export type Operation = {
  readonly id: string;
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  readonly path: string;
  readonly summary: string;
  readonly tag: string;
  readonly who: readonly Who[];
  readonly params?: z.ZodObject;
  readonly query?: z.ZodObject;
  readonly body?: z.ZodType;
  readonly reply: z.ZodType;
  readonly status: 200 | 201 | 204;
  readonly creates?: boolean;
  readonly guarded?: boolean;
  readonly timeoutMs?: number;
  /** The media type of an answer that goes on until it is closed; `reply` is then one message of it. */
  readonly stream?: 'text/event-stream';
  readonly bodyLimitBytes?: number;
};

export const operation = <const T extends Operation>(it: T): T => it;
