import { type ProblemCode, ProblemError, problems } from '@ballfirst/contracts/problems';
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';
import { databaseIsBusy } from './database-is-busy.ts';

export type Found = {
  readonly code: ProblemCode;
  readonly status: number;
  readonly detail: string;
  readonly fields: readonly { path: string; message: string }[];
  /** Ours to look at: goes to the log with its stack. */
  readonly unforeseen: boolean;
};

const found = (code: ProblemCode, more: Partial<Found> = {}): Found => {
  const [status, detail] = problems[code];
  return { code, status, detail, fields: [], unforeseen: false, ...more };
};

/** What the web framework refuses before a route is reached, in our words. */
const refusals: Readonly<Record<string, () => Found>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: () => found('too-large', { detail: 'That is larger than this address takes.' }),
  FST_ERR_CTP_INVALID_MEDIA_TYPE: () =>
    found('bad-request', { status: 415, detail: 'Send JSON, with content-type application/json.' }),
  FST_ERR_CTP_EMPTY_JSON_BODY: () =>
    found('bad-request', { detail: 'The body is empty; JSON was expected.' }),
  FST_ERR_CTP_INVALID_JSON_BODY: () => found('bad-request', { detail: 'The body is not JSON.' }),
  FST_ERR_HANDLER_TIMEOUT: () => found('busy'),
};

const words = (path: string, message: string) => ({ path: path === '' ? 'body' : path, message });

const ofValidation = (error: object): Found | null => {
  if (!hasZodFastifySchemaValidationErrors(error)) return null;
  // An id that is no id is not there: the same answer as for one that is another academy's.
  if (error.validationContext === 'params') return found('not-found');
  const fields = error.validation.map((it) =>
    words(it.instancePath.split('/').filter(Boolean).join('.'), it.message ?? 'is not right'),
  );
  return found('bad-request', { fields });
};

const numberAt = (error: object, key: string): number | null => {
  const value: unknown = Reflect.get(error, key);
  return typeof value === 'number' ? value : null;
};

/** What any thrown thing is to the outside: a known problem, or `unexpected` without a word of what it was. */
export const problemOf = (error: unknown): Found => {
  if (error instanceof ProblemError)
    return found(error.code, { detail: error.message, fields: error.fields });
  if (typeof error === 'object' && error !== null) {
    const validation = ofValidation(error);
    if (validation !== null) return validation;
    const code: unknown = Reflect.get(error, 'code');
    const refusal = typeof code === 'string' ? refusals[code] : undefined;
    if (refusal) return refusal();
    if (databaseIsBusy(error)) return found('busy');
    const status = numberAt(error, 'statusCode');
    if (status === 429) return found('too-many-tries');
    if (status === 413) return found('too-large');
    if (status === 404) return found('not-found');
    if (status === 503) return found('busy');
    if (status !== null && status >= 400 && status < 500) return found('bad-request', { status });
  }
  return found('unexpected', { unforeseen: true });
};
