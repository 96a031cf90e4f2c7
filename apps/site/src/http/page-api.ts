import { type ApiClient, createClient } from '@ballfirst/contracts/client';
import { cookies, headers } from 'next/headers';
import { env } from './env.ts';

/** The client of a page being rendered: it reads with the caller's own cookie and nothing else. */
export const pageApi = async (): Promise<ApiClient> => {
  const [jar, sent] = await Promise.all([cookies(), headers()]);
  const pairs = jar.getAll().map(({ name, value }) => `${name}=${value}`);
  const requestId = sent.get('x-request-id');
  return createClient({
    baseUrl: env.apiUrl,
    headers: {
      ...(pairs.length > 0 && { cookie: pairs.join('; ') }),
      ...(requestId !== null && { 'x-request-id': requestId }),
    },
  });
};
