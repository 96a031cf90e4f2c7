import type { ApiEnv } from '../env.ts';

type CookieEnv = Pick<ApiEnv, 'cookieSecure'>;

/** `__Host-` binds the cookie to this host and to https; a browser takes it on plain http from nobody. */
export const cookieName = (env: CookieEnv): string => (env.cookieSecure ? '__Host-ballfirst' : 'ballfirst');

export const cookieOptions = (env: CookieEnv) =>
  ({ path: '/', httpOnly: true, sameSite: 'lax', secure: env.cookieSecure }) as const;
