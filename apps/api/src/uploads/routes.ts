import { ProblemError } from '@ballfirst/contracts/problems';
import { finishClip } from '@ballfirst/services/clips/finish-clip';
import { readUpload } from '@ballfirst/services/clips/read-upload';
import { clipBytesAtMost, startClip } from '@ballfirst/services/clips/start-clip';
import type { Context, Resources } from '@ballfirst/services/context';
import { contextOf } from '@ballfirst/services/context-of';
import { MemoryLocker, Server } from '@tus/server';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import type { ApiEnv } from '../env.ts';
import { headersOfEveryAnswer } from '../plugins/security-headers.ts';
import { newUploadOf } from './new-upload.ts';
import { SyncedStore } from './synced-store.ts';
import { tusAnswer } from './tus-answer.ts';
import { type Pace, watchPace } from './watch-pace.ts';

const path = '/uploads';

/**
 * Resumable uploads by tus 1.0 (creation, creation-with-upload, expiration). The door finds out who asks and for which
 * clip; the protocol's server is made for that one clip, so it cannot reach another. No time limit on the whole body: a
 * connection is cut by idleness and by pace.
 */
export const uploadRoutes = async (
  app: FastifyInstance,
  { env, resources, pace }: { env: ApiEnv; resources: Resources; pace: Pace },
): Promise<void> => {
  const locker = new MemoryLocker({ acquireLockTimeout: 10_000 });
  app.removeAllContentTypeParsers();
  app.addContentTypeParser('application/offset+octet-stream', (_request, _payload, done) => done(null));

  const studentOf = async (request: FastifyRequest, reply: FastifyReply): Promise<Context> => {
    const { actor } = await request.signedIn(reply);
    const ctx = contextOf({ resources, actor, requestId: request.id });
    if (actor.role !== 'student') throw new ProblemError('not-allowed');
    return ctx;
  };

  const goOn = async (ctx: Context, clipId: string, request: FastifyRequest, reply: FastifyReply) => {
    const upload = await readUpload({ ctx, input: { clipId } });
    const store = new SyncedStore(upload, resources.blobs.localPath(upload.key));
    const finish = async () => {
      await finishClip({ ctx, input: { clipId } });
      return {};
    };
    // The last answer may have been lost on its way, or this process ended before it noted the last byte.
    const whole =
      upload.status === 'uploading' && (await resources.blobs.size(upload.key)) === upload.lengthBytes;
    if (request.method === 'HEAD' && whole) await finish();
    const tus = new Server({
      path,
      datastore: store,
      locker,
      maxSize: clipBytesAtMost,
      relativeLocation: true,
      allowedOrigins: [env.publicUrl],
      namingFunction: () => clipId,
      getFileIdFromRequest: () => clipId,
      onUploadFinish: finish,
      onResponseError: (_request, error) => tusAnswer(error, resources.log, request.id),
    });
    const stop = watchPace(request.raw.socket, pace);
    reply.hijack();
    const headers = { ...headersOfEveryAnswer(request, env.cookieSecure), ...reply.getHeaders() };
    for (const [name, value] of Object.entries(headers))
      if (value !== undefined) reply.raw.setHeader(name, value);
    reply.raw.setHeader('cache-control', 'no-store');
    if (upload.status === 'uploading') reply.raw.setHeader('upload-expires', upload.expiresAt.toUTCString());
    await tus.handle(request.raw, reply.raw).finally(stop);
  };

  app.options(path, (_request, reply) =>
    reply
      .code(204)
      .headers({
        'tus-resumable': '1.0.0',
        'tus-version': '1.0.0',
        'tus-extension': 'creation,creation-with-upload,expiration',
        'tus-max-size': clipBytesAtMost,
      })
      .send(),
  );
  app.post(path, async (request, reply) => {
    const ctx = await studentOf(request, reply);
    const clip = await startClip({ ctx, input: newUploadOf(request) });
    await goOn(ctx, clip.id, request, reply);
  });
  app.route<{ Params: { clipId: string } }>({
    method: ['HEAD', 'PATCH'],
    url: `${path}/:clipId`,
    schema: { params: z.object({ clipId: z.uuid() }) },
    handler: async (request, reply) => {
      await goOn(await studentOf(request, reply), request.params.clipId, request, reply);
    },
  });
};
