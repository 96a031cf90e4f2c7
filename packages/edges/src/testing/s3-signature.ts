import { createHash, createHmac } from 'node:crypto';

export type SeenRequest = {
  readonly method: string;
  /** Path and query as sent. */
  readonly target: string;
  readonly headers: Readonly<Record<string, string | undefined>>;
  readonly bodySha256: string;
};

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');
const hmac = (key: Buffer | string, text: string): Buffer => createHmac('sha256', key).update(text).digest();

/**
 * The signature a request should carry, reckoned from the published recipe and not by the library under test.
 *
 * @source AWS Signature Version 4, "Authenticating Requests: Using the Authorization Header"
 */
export const signatureOf = (it: SeenRequest, secret: string): string => {
  const authorization = it.headers.authorization ?? '';
  const [, scope = ''] = /Credential=[^/]+\/([^,]+)/.exec(authorization) ?? [];
  const [, signed = ''] = /SignedHeaders=([^,]+)/.exec(authorization) ?? [];
  const [path = '', query = ''] = it.target.split('?');
  const canonical = [
    it.method,
    path,
    query.split('&').sort().join('&'),
    ...signed.split(';').map((name) => `${name}:${(it.headers[name] ?? '').trim()}`),
    '',
    signed,
    it.bodySha256,
  ].join('\n');
  const toSign = ['AWS4-HMAC-SHA256', it.headers['x-amz-date'], scope, sha256(canonical)].join('\n');
  const key = scope.split('/').reduce<Buffer | string>((made, part) => hmac(made, part), `AWS4${secret}`);
  return hmac(key, toSign).toString('hex');
};
