import { ProblemError } from '@ballfirst/contracts/problems';
import type { Resources } from '@ballfirst/services/context';
import type { Opened, Session } from '@ballfirst/services/identity/call';
import { keepSession } from '@ballfirst/services/identity/keep-session';
import { readActor } from '@ballfirst/services/identity/read-actor';
import cookie from '@fastify/cookie';
import type { FastifyReply, FastifyRequest } from 'fastify';
import plugin from 'fastify-plugin';
import type { ApiEnv } from '../env.ts';
import { cookieName, cookieOptions } from './session-cookie.ts';

declare module 'fastify' {
  interface FastifyRequest {
    session: Session | null;
    /** The session of the cookie. @throws ProblemError not-signed-in */
    signedIn(reply: FastifyReply): Promise<Session>;
  }
  interface FastifyReply {
    setSession(opened: Opened): void;
    clearSession(): void;
  }
}

/**
 * Only a browser that speaks for itself is given a new token: the site reads pages with its caller's cookie and could
 * not pass a new one on. Browsers send Sec-Fetch-Site and no page can forge or drop it.
 */
const isBrowser = (request: FastifyRequest): boolean => request.headers['sec-fetch-site'] !== undefined;

/** Cookie -> session -> actor, once a request and only where a route asks for it. */
export const sessions = plugin<{ env: ApiEnv; resources: Resources }>(
  async (app, { env, resources }) => {
    await app.register(cookie);
    const name = cookieName(env);
    app.decorateRequest('session', null);
    app.decorateReply('setSession', function (opened) {
      this.setCookie(name, opened.token, { ...cookieOptions(env), expires: opened.expiresAt });
    });
    app.decorateReply('clearSession', function () {
      this.clearCookie(name, cookieOptions(env));
    });
    app.decorateRequest('signedIn', async function (reply) {
      if (this.session !== null) return this.session;
      const token = this.cookies[name];
      const actor = token ? await readActor({ resources, token }) : null;
      if (!token || actor === null) throw new ProblemError('not-signed-in');
      const opened = await keepSession({ resources, session: { token, actor }, mayRotate: isBrowser(this) });
      if (opened !== null) reply.setSession(opened);
      this.session = { token: opened?.token ?? token, actor };
      return this.session;
    });
  },
  { name: 'sessions' },
);
