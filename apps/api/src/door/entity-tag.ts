import { ProblemError } from '@ballfirst/contracts/problems';

/**
 * The version of a thing as a strong entity tag (RFC 9110, 8.8.3): If-Match compares strongly, and the version names
 * every change of the data.
 */
export const entityTag = (version: number): string => `"${version}"`;

/**
 * The version named by If-Match. `W/` is taken too: a proxy that compresses answers weakens our tag on its way out.
 * @throws ProblemError precondition-missing without one version; changed-meanwhile for a tag that is none of ours
 */
export const versionOf = (ifMatch: string | undefined): number => {
  const tag = ifMatch?.trim() ?? '';
  if (tag === '' || tag === '*' || tag.includes(',')) throw new ProblemError('precondition-missing');
  const digits = /^(?:W\/)?"(\d{1,9})"$/.exec(tag)?.[1];
  if (digits === undefined) throw new ProblemError('changed-meanwhile');
  return Number(digits);
};
