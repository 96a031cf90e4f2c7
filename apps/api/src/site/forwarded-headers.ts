import type { IncomingHttpHeaders } from 'node:http';

/** Said by somebody before us, or read by the site as an order: the door says these itself or not at all. */
const taken = [
  'forwarded',
  'via',
  'x-real-ip',
  'x-request-id',
  'content-security-policy',
  'content-security-policy-report-only',
  'next-action',
  'proxy-authorization',
  'proxy-connection',
  'keep-alive',
  'te',
  'trailer',
  'transfer-encoding',
  'upgrade',
];
const takenPrefixes = ['x-forwarded-', 'x-middleware-', 'x-nextjs-'];

/**
 * The headers the site is given: the caller's without what only the door may say, with the request id, the public
 * address and the policy whose nonce the site puts on its scripts.
 */
export const forwardedHeaders = (
  headers: IncomingHttpHeaders,
  ours: { requestId: string; publicUrl: string; policy: string; address: string },
): IncomingHttpHeaders => {
  const kept = Object.entries(headers).filter(
    ([name]) => !taken.includes(name) && !takenPrefixes.some((it) => name.startsWith(it)),
  );
  const url = new URL(ours.publicUrl);
  return {
    ...Object.fromEntries(kept),
    'x-request-id': ours.requestId,
    'x-forwarded-host': url.host,
    'x-forwarded-proto': url.protocol.slice(0, -1),
    'x-forwarded-for': ours.address,
    'content-security-policy': ours.policy,
  };
};
