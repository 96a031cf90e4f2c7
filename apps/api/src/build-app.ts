import { randomUUID } from 'node:crypto';
import type { Resources } from '@ballfirst/services/context';
import rateLimit from '@fastify/rate-limit';
import Fastify, { type FastifyInstance } from 'fastify';
import { validatorCompiler } from 'fastify-type-provider-zod';
import { docsRoutes } from './docs/routes.ts';
import { checkedReply } from './door/checked-reply.ts';
import type { ApiEnv } from './env.ts';
import { healthRoutes } from './health/routes.ts';
import { liveRoutes } from './live/routes.ts';
import { mediaRoutes } from './media/routes.ts';
import { originCheck } from './plugins/origin-check.ts';
import { problemAnswers } from './plugins/problems.ts';
import { securityHeaders } from './plugins/security-headers.ts';
import { sessions } from './plugins/session.ts';
import { compareRoutes } from './routes/compare.ts';
import { identityRoutes } from './routes/identity.ts';
import { inboxRoutes } from './routes/inbox.ts';
import { libraryRoutes } from './routes/library.ts';
import { practiceRoutes } from './routes/practice.ts';
import { remindersRoutes } from './routes/reminders.ts';
import { reviewRoutes } from './routes/review.ts';
import { staffRoutes } from './routes/staff.ts';
import { studentsRoutes } from './routes/students.ts';
import { submissionsRoutes } from './routes/submissions.ts';
import { talkThroughRoutes } from './routes/talk-through.ts';
import { forwardToSite } from './site/forward.ts';
import { uploadRoutes } from './uploads/routes.ts';
import { type OpenUploadFile, openUploadFile } from './uploads/upload-file.ts';
import { type Pace, slowestPace } from './uploads/watch-pace.ts';

export type AppParts = {
  readonly env: ApiEnv;
  readonly resources: Resources;
  readonly pace?: Pace;
  /** Another way to open the file of an upload: for disks that fail. */
  readonly openFile?: OpenUploadFile;
  /** Between two heartbeats of a stream of events. */
  readonly beatMs?: number;
};

const areas = [
  identityRoutes,
  inboxRoutes,
  submissionsRoutes,
  remindersRoutes,
  reviewRoutes,
  compareRoutes,
  talkThroughRoutes,
  practiceRoutes,
  staffRoutes,
  studentsRoutes,
  libraryRoutes,
];
/** Under these the site never answers: what is not there is a problem, not a page. */
const ours = ['/api', '/api/*', '/uploads/*', '/media', '/media/*'];

/** The one door, ready to listen or to be injected into. It decides nothing: routes translate, verbs decide. */
export const buildApp = async ({
  env,
  resources,
  pace = slowestPace,
  openFile = openUploadFile,
  beatMs,
}: AppParts): Promise<FastifyInstance> => {
  const app = Fastify({
    logger: false,
    genReqId: () => randomUUID(),
    trustProxy: env.trustedProxies.length > 0 ? env.trustedProxies : false,
    // Idle sockets are cut. No limit on a whole request here: Node counts the body in, which cuts a slow phone's
    // upload; JSON routes have their own limit, which counts the body, and uploads are watched by pace.
    connectionTimeout: 30_000,
    keepAliveTimeout: 65_000,
    requestTimeout: 0,
    http: { headersTimeout: 15_000, connectionsCheckingInterval: 5_000 },
    forceCloseConnections: 'idle',
    routerOptions: { maxParamLength: 100 },
  });
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(checkedReply);
  app.removeContentTypeParser('text/plain');
  await app.register(problemAnswers, { resources });
  await app.register(securityHeaders, { env });
  healthRoutes(app, { env, resources });
  await app.register(originCheck, { env });
  await app.register(sessions, { env, resources });
  await app.register(rateLimit, { global: false });
  for (const routes of areas) routes({ app, resources });
  liveRoutes(app, { resources, url: env.directDatabaseUrl, ...(beatMs === undefined ? {} : { beatMs }) });
  docsRoutes(app);
  mediaRoutes(app, resources);
  await app.register(uploadRoutes, { resources, pace, openFile });
  for (const url of ours) app.all(url, (_request, reply) => reply.callNotFound());
  await forwardToSite(app, { env, log: resources.log });
  return app;
};
