import { type Problem, problems } from './problems.ts';

const isText = (value: unknown): value is string => typeof value === 'string';
const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;
const isCode = (value: unknown): value is Problem['code'] => isText(value) && Object.hasOwn(problems, value);
const isField = (value: unknown): value is { path: string; message: string } =>
  isRecord(value) && isText(value.path) && isText(value.message);

/** The problem in the body of an answer; null where it is none of ours. Written out: this runs on the student's phone. */
export const readProblem = (body: unknown): Problem | null => {
  if (!isRecord(body)) return null;
  const { type, title, status, code, detail, requestId, fields } = body;
  if (!isText(type) || !isText(title) || !isText(detail) || !isText(requestId)) return null;
  if (!Number.isInteger(status) || !isCode(code)) return null;
  const plain = { type, title, status: Number(status), code, detail, requestId };
  if (fields === undefined) return plain;
  return Array.isArray(fields) && fields.every(isField) ? { ...plain, fields } : null;
};
