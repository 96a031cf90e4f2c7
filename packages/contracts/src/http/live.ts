import { z } from 'zod';
import { liveKinds } from '../events.ts';
import { operation } from '../operation.ts';
import { Id } from '../words.ts';

/**
 * One message of the stream: its `id` line is the event's id, its `event` line the kind, its `data` line this as JSON.
 * Ids only: what they stand for is read through the API, by whoever may.
 */
export const LiveMessage = z.object({
  id: Id,
  kind: z.enum(liveKinds),
  ids: z.record(z.string(), Id),
});
export type LiveMessage = z.infer<typeof LiveMessage>;

export const followLive = operation({
  id: 'followLive',
  method: 'GET',
  path: '/api/live',
  tag: 'live',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'A stream of server-sent events (text/event-stream): what happens in the academy, as ids. It begins with the event `open`, is kept alive by comments, says `missed` when events may have been lost, and ends with the session.',
  stream: 'text/event-stream',
  reply: LiveMessage,
});
