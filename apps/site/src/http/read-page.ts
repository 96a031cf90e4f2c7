import { AnsweredProblem, type ApiClient } from '@ballfirst/contracts/client';
import { notFound, redirect } from 'next/navigation';
import { pageApi } from './page-api.ts';

/** The sign-in page that comes back to `path`. */
export const signInPath = (path: string): string => `/sign-in?next=${encodeURIComponent(path)}`;

/**
 * Reads what a page shows. Signed out: to the sign-in and back to `path`; another role's page: to the reader's own
 * first page; missing and foreign: not found. Anything else is thrown to the error page.
 */
export async function readPage<T>(path: string, read: (api: ApiClient) => Promise<T>): Promise<T> {
  try {
    return await read(await pageApi());
  } catch (error) {
    if (!(error instanceof AnsweredProblem)) throw error;
    if (error.code === 'not-signed-in' || error.code === 'choose-academy') redirect(signInPath(path));
    if (error.code === 'not-allowed') redirect('/');
    if (error.code === 'not-found' || error.code === 'bad-request') notFound();
    throw error;
  }
}
