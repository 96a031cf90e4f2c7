import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant } from '../words.ts';
import { Clip, idParam } from './submissions.ts';

/** Three minutes, and a second for the recorder to come to rest. */
const longestMs = 181_000;
/** Three minutes of speech take a quarter of it. */
export const mostSoundBytes = 3 * 1024 * 1024;
const ofPicture = z.number().min(-10_000).max(20_000);

/** What the stage showed from an instant of the recording on. */
export const TalkStep = z.object({
  atMs: z.number().int().min(0).max(longestMs),
  frame: z.number().int().min(0).max(100_000),
  /** How many times as large, around which point of the picture, in its pixels. */
  times: z.number().min(1).max(8),
  x: ofPicture,
  y: ofPicture,
  /** What is pointed at, in pixels of the picture. */
  point: z.object({ x: ofPicture, y: ofPicture }).nullable(),
});
/** Stepping, zooming and pointing, twelve times a second at most. */
export const TalkTrack = z
  .array(TalkStep)
  .min(1, 'The track has no step.')
  .max(2400, 'The track has too many steps.')
  .refine((steps) => steps.every(({ atMs }, at) => at === 0 || atMs >= (steps[at - 1]?.atMs ?? 0)), {
    message: 'The steps of the track go back in time.',
  });
export const Caption = z.object({
  atMs: z.number().int().min(0).max(longestMs),
  words: z.string().trim().min(1).max(240),
});
const Captions = z.array(Caption).max(80, 'There are too many captions: 80 at most.');

/** A coach's voice with the track that is replayed on the student's own clip. */
export const TalkThrough = z.object({
  id: Id,
  clipId: Id,
  by: z.string(),
  at: Instant,
  durationMs: z.number().int(),
  /** Address under /media, checked on every request. */
  sound: z.string(),
  track: TalkTrack,
  captions: z.array(Caption),
});
/** The same as a student replays it. */
export const HeardTalk = TalkThrough.omit({ by: true, at: true }).extend({
  picture: Clip.shape.picture.unwrap(),
  media: Clip.shape.media.unwrap(),
});

const address = {
  path: '/api/submissions/{id}/talk-through',
  tag: 'review',
  who: ['coach', 'manager'],
  params: idParam,
} as const;

export const readTalkThrough = operation({
  ...address,
  id: 'readTalkThrough',
  method: 'GET',
  status: 200,
  summary: 'The talk-through that goes with the reply; null where there is none.',
  reply: z.object({ talkThrough: TalkThrough.nullable() }),
});
export const saveTalkThrough = operation({
  ...address,
  id: 'saveTalkThrough',
  method: 'PUT',
  status: 200,
  summary: 'Keep a recorded talk-through with the draft of the reply, in place of an earlier one.',
  body: z.object({
    clipId: Id,
    durationMs: z.number().int().min(500, 'That is too short to hear.').max(longestMs),
    /** The recording as the browser gives it: WebM, MP4 or Ogg. */
    sound: z.base64().max(Math.ceil(mostSoundBytes / 3) * 4, 'The recording is too large.'),
    track: TalkTrack,
    captions: Captions,
  }),
  reply: TalkThrough,
  bodyLimitBytes: 6 * 1024 * 1024,
});
export const captionTalkThrough = operation({
  ...address,
  id: 'captionTalkThrough',
  path: '/api/submissions/{id}/talk-through/captions',
  method: 'PUT',
  status: 200,
  summary: 'Keep the captions of the talk-through that goes with the draft of the reply.',
  body: z.object({ captions: Captions }),
  reply: TalkThrough,
});
export const dropTalkThrough = operation({
  ...address,
  id: 'dropTalkThrough',
  method: 'DELETE',
  status: 204,
  summary: 'Take the talk-through away from the draft of the reply.',
  reply: z.null(),
});
