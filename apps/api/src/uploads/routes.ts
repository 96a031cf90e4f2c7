import { ProblemError } from '@ballfirst/contracts/problems';
import { dropClip } from '@ballfirst/services/clips/drop-clip';
import { finishClip } from '@ballfirst/services/clips/finish-clip';
import { readUpload, type Upload } from '@ballfirst/services/clips/read-upload';
import { clipBytesAtMost, startClip } from '@ballfirst/services/clips/start-clip';
import type { Context, Resources } from '@ballfirst/services/context';
import { contextOf } from '@ballfirst/services/context-of';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { z } from 'zod';
import { drained } from './drained.ts';
import { newUploadOf } from './new-upload.ts';
import { takeChunk } from './take-chunk.ts';
import { carriesChunk, chunkType, offsetIn, speakTus, tusExtensions, tusVersion } from './tus-headers.ts';
import { bytesOnDisk, type OpenUploadFile } from './upload-file.ts';
import { openUploadLocks } from './upload-locks.ts';
import type { Pace } from './watch-pace.ts';

const path = '/uploads';

type Parts = { readonly resources: Resources; readonly pace: Pace; readonly openFile: OpenUploadFile };
type OfClip = { Params: { clipId: string } };

/**
 * Resumable uploads by tus 1.0. The bytes so far are the size of the file and nothing else is written down. No time limit
 * on the whole body: a connection is cut by idleness and by pace.
 */
export const uploadRoutes = async (
  app: FastifyInstance,
  { resources, pace, openFile }: Parts,
): Promise<void> => {
  const { blobs, db } = resources;
  const locks = openUploadLocks(db);
  app.addHook('onClose', () => locks.close());
  app.addHook('onRequest', speakTus);
  app.addHook('onError', (request) => drained(request.raw));
  app.removeAllContentTypeParsers();
  app.addContentTypeParser('*', (_request, _body, done) => done(null));

  const studentOf = async (request: FastifyRequest, reply: FastifyReply): Promise<Context> => {
    const { actor } = await request.signedIn(reply);
    if (actor.role !== 'student') throw new ProblemError('not-allowed');
    return contextOf({ resources, actor, requestId: request.id });
  };
  const pathOf = (upload: Upload): string => blobs.localPath(upload.key);

  /** The last byte is here: the file goes to the store before anybody is told that it is there. */
  const arrive = async (ctx: Context, upload: Upload): Promise<void> => {
    if (upload.status === 'uploading') await blobs.settle(upload.key);
    await finishClip({ ctx, input: { clipId: upload.clipId } });
    await blobs.release(upload.key);
  };

  /** The true offset; a file that is whole though nobody noted it (the process ended just then) is noted now. */
  const offsetNow = async (ctx: Context, upload: Upload): Promise<number> => {
    if (upload.status !== 'uploading') return upload.lengthBytes;
    const file = await openFile(pathOf(upload));
    const offset = await bytesOnDisk(file).finally(() => file.close());
    if (offset === upload.lengthBytes) await arrive(ctx, upload);
    return offset;
  };

  const goOn = async (
    ctx: Context,
    upload: Upload,
    offset: number,
    request: FastifyRequest,
    reply: FastifyReply,
  ) => {
    reply.header('upload-offset', offset);
    try {
      if (upload.status !== 'uploading' && offset !== upload.lengthBytes)
        throw new ProblemError('upload-elsewhere');
      const chunk = { upload, path: pathOf(upload), offset };
      const reached =
        upload.status === 'uploading'
          ? await takeChunk(request, chunk, { locks, pace, openFile })
          : upload.lengthBytes;
      if (reached === upload.lengthBytes) await arrive(ctx, upload);
      reply.header('upload-offset', reached);
    } catch (error) {
      reply.header('upload-offset', await offsetNow(ctx, upload).catch(() => offset));
      throw error;
    }
  };
  const sayExpiry = (reply: FastifyReply, upload: Upload): void => {
    if (upload.status === 'uploading') reply.header('upload-expires', upload.expiresAt.toUTCString());
  };

  app.options(path, (_request, reply) =>
    reply
      .code(204)
      .headers({
        'tus-version': tusVersion,
        'tus-extension': tusExtensions,
        'tus-max-size': clipBytesAtMost,
      })
      .send(),
  );
  app.post(path, async (request, reply) => {
    const ctx = await studentOf(request, reply);
    const { id: clipId } = await startClip({ ctx, input: newUploadOf(request) });
    const upload = await readUpload({ ctx, input: { clipId } });
    await offsetNow(ctx, upload);
    if (carriesChunk(request)) await goOn(ctx, upload, 0, request, reply);
    sayExpiry(reply, upload);
    return reply.code(201).header('location', `${path}/${clipId}`).send();
  });

  const schema = { params: z.object({ clipId: z.uuid() }) };
  const url = `${path}/:clipId`;
  app.head<OfClip>(url, { schema }, async (request, reply) => {
    const ctx = await studentOf(request, reply);
    const upload = await readUpload({ ctx, input: request.params });
    sayExpiry(reply, upload);
    reply.headers({ 'upload-offset': await offsetNow(ctx, upload), 'upload-length': upload.lengthBytes });
    return reply.code(200).send();
  });
  app.patch<OfClip>(url, { schema }, async (request, reply) => {
    const ctx = await studentOf(request, reply);
    if (!carriesChunk(request)) throw new ProblemError('not-a-video', `Send the bytes as ${chunkType}.`);
    const upload = await readUpload({ ctx, input: request.params });
    await goOn(ctx, upload, offsetIn(request), request, reply);
    sayExpiry(reply, upload);
    return reply.code(204).send();
  });
  app.delete<OfClip>(url, { schema }, async (request, reply) => {
    await dropClip({ ctx: await studentOf(request, reply), input: request.params });
    return reply.code(204).send();
  });
};
