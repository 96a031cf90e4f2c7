import { operations } from '@ballfirst/contracts/http/operations';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Resources } from '@ballfirst/services/context';
import { readActor } from '@ballfirst/services/identity/read-actor';
import type { FastifyInstance, FastifyReply } from 'fastify';
import { mayUse } from '../door/may-use.ts';
import { type LiveHub, liveHub } from './hub.ts';

/** A comment so often that no proxy in between thinks the line dead; the session is looked at as often. */
const beatMs = 15_000;
/** Open pages of one person at once. */
const streamsAtMost = 8;
/** A reader who takes nothing is let go; the page comes back by itself and reads anew. */
const unreadBytesAtMost = 64 * 1024;

type Parts = { readonly resources: Resources; readonly url: string; readonly beatMs?: number };
type Stream = { readonly personId: string; readonly end: () => void };

/**
 * `GET /api/live`: server-sent events (WHATWG HTML, 9.2). Ids and kinds of one academy, to its staff, as long as the session
 * stands for them; the server closes every stream at once when it stops.
 */
export const liveRoutes = (app: FastifyInstance, parts: Parts): void => {
  const { resources } = parts;
  const hub: LiveHub = liveHub({ url: parts.url, log: resources.log });
  const streams = new Set<Stream>();
  app.addHook('preClose', async () => {
    for (const { end } of streams) end();
    await hub.stop();
  });

  const it = operations.followLive;
  app.get(it.path, async (request, reply) => {
    const { token, actor } = await request.signedIn(reply);
    const { academyId, role, personId } = actor;
    if (academyId === null || role === null) throw new ProblemError('choose-academy');
    if (!mayUse(it.who, role)) throw new ProblemError('not-allowed');
    if ([...streams].filter((stream) => stream.personId === personId).length >= streamsAtMost) {
      throw new ProblemError('too-many-tries', 'Too many pages of yours are open. Close one.');
    }
    const { raw } = open(reply);
    const say = (text: string): void => {
      if (raw.writableEnded) return;
      raw.write(text);
      if (raw.writableLength > unreadBytesAtMost) raw.destroy();
    };
    say('retry: 3000\nevent: open\ndata: {}\n\n');
    const leave = hub.follow({
      academyId,
      told: (message) =>
        say(`id: ${message.id}\nevent: ${message.kind}\ndata: ${JSON.stringify(message)}\n\n`),
      missed: () => say('event: missed\ndata: {}\n\n'),
    });
    const stream: Stream = { personId, end: () => raw.end() };
    streams.add(stream);
    const beat = setInterval(async () => {
      say(': here\n\n');
      const now = await readActor({ resources, token }).catch(() => actor);
      if (now?.academyId !== academyId || now.role !== role) raw.end();
    }, parts.beatMs ?? beatMs);
    raw.on('close', () => {
      clearInterval(beat);
      streams.delete(stream);
      leave();
    });
    return reply;
  });
};

/** Takes the answer out of Fastify's hands, headers first, so that the page knows at once that it follows. */
const open = (reply: FastifyReply): FastifyReply => {
  reply.hijack();
  for (const [name, value] of Object.entries(reply.getHeaders())) {
    if (value !== undefined) reply.raw.setHeader(name, value as string | string[]);
  }
  reply.raw.writeHead(200, {
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    'x-accel-buffering': 'no',
  });
  reply.raw.flushHeaders();
  // The idle cut of other connections would end a stream on which nothing happens.
  reply.raw.socket?.setTimeout(0);
  return reply;
};
