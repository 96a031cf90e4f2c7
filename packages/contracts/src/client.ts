import createFetchClient, { type Client } from 'openapi-fetch';
import type { z } from 'zod';
import type { paths } from './generated-api.ts';
import type { OperationId, operations } from './http/operations.ts';
import { type Problem, ProblemError } from './problems.ts';
import { readProblem } from './read-problem.ts';

export type ApiClient = Client<paths>;

/** What an operation answers with, what it takes as a body and as a query, by its id: `Reply<'readInbox'>`. */
export type Reply<K extends OperationId> = z.output<(typeof operations)[K]['reply']>;
export type Body<K extends OperationId> = (typeof operations)[K] extends { body: infer B extends z.ZodType }
  ? z.input<B>
  : never;
export type Query<K extends OperationId> = (typeof operations)[K] extends { query: infer Q extends z.ZodType }
  ? z.input<Q>
  : never;

export type ClientOptions = {
  /** The address of the door without a slash at the end; '' in a browser. */
  baseUrl: string;
  fetch?: (request: Request) => Promise<Response>;
  headers?: Record<string, string>;
};

/** A client of the HTTP API, typed by its OpenAPI document. Nothing is cached. */
export const createClient = (options: ClientOptions): ApiClient =>
  createFetchClient<paths>({ cache: 'no-store', credentials: 'same-origin', ...options });

/** The value of If-Match for a version that was read: a strong entity tag (RFC 9110, 8.8.3). */
export const ifMatch = (version: number): string => `"${version}"`;

/** A problem as answered by the door, with the id that finds the request in the log. */
export class AnsweredProblem extends ProblemError {
  readonly status: number;
  readonly requestId: string;
  constructor(problem: Problem) {
    super(problem.code, problem.detail, problem.fields ?? []);
    this.name = 'AnsweredProblem';
    this.status = problem.status;
    this.requestId = problem.requestId;
  }
}

const problemOf = (body: unknown, response: Response): Problem => {
  const known = readProblem(body);
  if (known !== null) return known;
  const code = response.status >= 502 && response.status <= 504 ? 'busy' : 'unexpected';
  const requestId = response.headers.get('x-request-id') ?? '';
  const { message } = new ProblemError(code);
  return {
    type: `urn:ballfirst:${code}`,
    title: message,
    status: response.status,
    code,
    detail: message,
    requestId,
  };
};

/**
 * The answer itself: `const inbox = await answerOf(api.GET('/api/inbox'))`.
 * @throws AnsweredProblem for every answer that is not a success
 */
export const answerOf = async <T>(
  call: Promise<{ data?: T; error?: unknown; response: Response }>,
): Promise<T> => {
  const { data, error, response } = await call;
  if (!response.ok) throw new AnsweredProblem(problemOf(error, response));
  return data as T;
};
