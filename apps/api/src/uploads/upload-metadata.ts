import { ProblemError } from '@ballfirst/contracts/problems';

const pair = /^([\x21-\x2b\x2d-\x7e]+)(?: +([A-Za-z0-9+/]*={0,2}))?$/;

/**
 * The names and values of Upload-Metadata: `name base64, name base64` (tus 1.0.0, Creation).
 * @throws ProblemError bad-request
 */
export const metadataIn = (header: unknown): Record<string, string> => {
  const pairs = typeof header === 'string' ? header.split(',').map((it) => pair.exec(it.trim())) : [];
  const told: Record<string, string> = {};
  for (const found of pairs) {
    const [, name = '', value = ''] = found ?? [];
    if (name === '' || Object.hasOwn(told, name)) {
      throw new ProblemError('bad-request', 'Upload-Metadata is not in the form of tus 1.0.');
    }
    told[name] = Buffer.from(value, 'base64').toString('utf8');
  }
  return told;
};
