import { ProblemError } from '@ballfirst/contracts/problems';
import { type MediaFile, mediaFiles } from '@ballfirst/services/clips/keys';
import { readClipForMedia } from '@ballfirst/services/clips/read-clip-for-media';
import type { Resources } from '@ballfirst/services/context';
import { contextOf } from '@ballfirst/services/context-of';
import { readStillForMedia } from '@ballfirst/services/stills/read-still-for-media';
import { stillsAtMost } from '@ballfirst/services/stills/still-key';
import { readTalkSound } from '@ballfirst/services/talk-through/read-talk-sound';
import type { FastifyInstance, FastifyReply } from 'fastify';
import { z } from 'zod';
import { byteRange } from './byte-range.ts';

const names = Object.keys(mediaFiles) as [MediaFile, ...MediaFile[]];
const StillParams = z.object({
  replyId: z.uuid(),
  index: z.coerce
    .number()
    .int()
    .min(0)
    .max(stillsAtMost - 1),
});
const Params = z.object({ clipId: z.uuid(), file: z.enum(names) });
const TalkParams = z.object({ id: z.uuid() });

/** Whether what the browser holds is still right, so that nothing need be sent (RFC 9110, 13.1.2). */
const holdsIt = (ifNoneMatch: string | undefined, tag: string): boolean =>
  (ifNoneMatch ?? '').split(',').some((it) => it.trim().replace(/^W\//, '') === tag);

/** What was made of a clip, and what was said to it, for those who may: asked again for every request, kept by the browser only. */
export const mediaRoutes = (app: FastifyInstance, resources: Resources): void => {
  const { blobs } = resources;

  const send = async (reply: FastifyReply, key: string, tag: string): Promise<FastifyReply> => {
    const { headers, method } = reply.request;
    const size = await blobs.size(key);
    if (size === null) throw new ProblemError('not-found');
    reply.headers({
      etag: tag,
      'accept-ranges': 'bytes',
      'cache-control': 'private, max-age=300',
      vary: 'Cookie',
    });
    if (holdsIt(headers['if-none-match'], tag)) return reply.code(304).send();
    const ifRange = headers['if-range'];
    const range = ifRange === undefined || ifRange === tag ? byteRange(headers.range, size) : null;
    if (range === 'outside') return reply.code(416).header('content-range', `bytes */${size}`).send();
    const { start, end } = range ?? { start: 0, end: size - 1 };
    if (range !== null) reply.code(206).header('content-range', `bytes ${start}-${end}/${size}`);
    reply.header('content-length', end - start + 1);
    return reply.send(method === 'HEAD' || size === 0 ? null : await blobs.read(key, { start, end }));
  };

  app.route<{ Params: z.output<typeof Params> }>({
    method: ['GET', 'HEAD'],
    url: '/media/clips/:clipId/:file',
    schema: { params: Params },
    handler: async (request, reply) => {
      const { actor } = await request.signedIn(reply);
      const ctx = contextOf({ resources, actor, requestId: request.id });
      const { clipId, file } = request.params;
      const { key, type } = await readClipForMedia({ ctx, input: { clipId, file } });
      return send(reply.type(type), key, `"${clipId}.${file}"`);
    },
  });
  app.route<{ Params: z.output<typeof TalkParams> }>({
    method: ['GET', 'HEAD'],
    url: '/media/talk-throughs/:id/sound',
    schema: { params: TalkParams },
    handler: async (request, reply) => {
      const { actor } = await request.signedIn(reply);
      const ctx = contextOf({ resources, actor, requestId: request.id });
      const { id } = request.params;
      const { key, type } = await readTalkSound({ ctx, input: { id } });
      return send(reply.type(type), key, `"${id}"`);
    },
  });

  app.route<{ Params: z.output<typeof StillParams> }>({
    method: ['GET', 'HEAD'],
    url: '/media/replies/:replyId/:index.jpg',
    schema: { params: StillParams },
    handler: async (request, reply) => {
      const { actor } = await request.signedIn(reply);
      const ctx = contextOf({ resources, actor, requestId: request.id });
      const { replyId, index } = request.params;
      const { key, type, version } = await readStillForMedia({ ctx, input: { replyId, index } });
      return send(reply.type(type), key, `"${replyId}.${index}.${version}"`);
    },
  });
};
