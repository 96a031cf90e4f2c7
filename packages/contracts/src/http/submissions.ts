import { z } from 'zod';
import { operation } from '../operation.ts';
import {
  AgeGroup,
  Answer,
  ClipStatus,
  Club,
  Cursor,
  Curve,
  Hand,
  Id,
  Instant,
  Lie,
  Outcome,
  Pain,
  Point,
  Position,
  Standing,
  StartLine,
  SubmissionStatus,
  SwingLength,
  Tally,
  Typical,
  View,
} from '../words.ts';

/** Where to look first in a clip. `confidence`: certain enough to start there, worth a look, or one of several. */
export const Suggestion = z.object({
  /** The strike as the sound gives it, carried back to the ball; null where none was heard. */
  impact: z
    .object({
      frame: z.number().int().min(0),
      impactMs: z.number(),
      /** Standard uncertainty of `impactMs`, in milliseconds. */
      uMs: z.number(),
      /** The same in whole frames, at least 1. */
      uFrames: z.number().int().min(1),
      confidence: z.enum(['likely', 'possible', 'unsure']),
      /** How many other sounds like a strike there are. */
      others: z.number().int().min(0),
    })
    .nullable(),
  /** The frames between which the picture moves most. */
  window: z.object({ first: z.number().int().min(0), last: z.number().int().min(0) }).nullable(),
  /** Frames of the small pictures in `media.strip`, left to right; empty where there is none. */
  strip: z.array(z.number().int().min(0)).max(24),
});
export type Suggestion = z.infer<typeof Suggestion>;

export const Clip = z.object({
  id: Id,
  submissionId: Id.nullable(),
  fileName: z.string(),
  view: View,
  swingLength: SwingLength,
  status: ClipStatus,
  lengthBytes: z.number().int(),
  /** Of preparing, 0..100. */
  percent: z.number().int().min(0).max(100),
  /** Why it was refused and what to do instead, in words; null otherwise. */
  refusal: z.object({ code: z.string(), words: z.string() }).nullable(),
  picture: z
    .object({
      widthPx: z.number().int(),
      heightPx: z.number().int(),
      frames: z.number().int(),
      fps: z.number(),
      durationMs: z.number().int(),
    })
    .nullable(),
  /** Addresses under /media, each checked on every request; null until ready. `strip`: null where none was made. */
  media: z
    .object({
      rendition: z.string(),
      poster: z.string(),
      frameTimes: z.string(),
      strip: z.string().nullable(),
    })
    .nullable(),
  /** What the machine heard and saw: to look there first, never a fact. Null where it found nothing to say. */
  suggestion: Suggestion.nullable(),
  createdAt: Instant,
});
export type Clip = z.infer<typeof Clip>;

export const Mark = z.object({
  position: Position,
  point: Point,
  frame: z.number().int().min(0),
  x: z.number(),
  y: z.number(),
  source: z.enum(['coach', 'suggested', 'carried']),
});
/** The clubhead on one frame near the ball, in pixels of the picture. */
export const TrailPoint = z.object({ frame: z.number().int().min(0), x: z.number(), y: z.number() });
export const Observation = z.object({ key: z.string().max(60), answer: Answer });

export const Submission = z.object({
  id: Id,
  student: z.object({
    id: Id,
    name: z.string(),
    hand: Hand,
    ageGroup: AgeGroup,
    standing: Standing,
    trialStartedAt: Instant.nullable(),
    trialEndsAt: Instant.nullable(),
  }),
  status: SubmissionStatus,
  club: Club,
  lie: Lie,
  tally: Tally,
  leadFault: Outcome.nullable(),
  startLine: StartLine,
  curve: Curve,
  typical: Typical,
  note: z.string(),
  pain: Pain,
  painNote: z.string(),
  painSeenAt: Instant.nullable(),
  sentAt: Instant,
  answerBy: Instant,
  claim: z.object({ membershipId: Id, name: z.string(), expiresAt: Instant }).nullable(),
  clips: z.array(Clip),
  replyId: Id.nullable(),
  answeredAt: Instant.nullable(),
  version: z.number().int(),
});
export type Submission = z.infer<typeof Submission>;

export const NewSubmission = z.object({
  clipIds: z.array(Id).min(1, 'Add a video of your swing before you send.').max(3),
  club: Club,
  lie: Lie,
  tally: Tally,
  startLine: StartLine,
  curve: Curve,
  typical: Typical,
  note: z.string().trim().max(1000),
  pain: Pain,
  painNote: z.string().trim().max(500),
  checkInId: Id.nullable(),
  /** How long the swing on these clips is; left out, what was said with each upload stays. */
  swingLength: SwingLength.exactOptional(),
  /** A photo of the grip, uploaded or still on its way; left out: none. */
  gripPhotoId: Id.nullable().exactOptional(),
});

/** What can be put right after sending; what is left out stays as it is. Pain is never taken back here. */
export const Correction = z.object({
  club: Club.exactOptional(),
  lie: Lie.exactOptional(),
  /** The student's own hand: every swing of the student that is not answered yet is read with it. */
  hand: Hand.exactOptional(),
  tally: Tally.exactOptional(),
  startLine: StartLine.exactOptional(),
  curve: Curve.exactOptional(),
  typical: Typical.exactOptional(),
  clips: z
    .array(z.object({ id: Id, view: View.exactOptional(), swingLength: SwingLength.exactOptional() }))
    .min(1)
    .max(3)
    .exactOptional(),
});
export type Correction = z.infer<typeof Correction>;

export const idParam = z.object({ id: Id });
const page = z.object({
  after: Cursor.optional(),
  limit: z.coerce.number().int().min(1).max(100).default(20),
});

export const sendSubmission = operation({
  id: 'sendSubmission',
  method: 'POST',
  path: '/api/submissions',
  tag: 'submissions',
  who: ['student'],
  status: 201,
  summary: 'Send a swing: clips already uploaded (or still uploading) with how it went.',
  body: NewSubmission,
  reply: Submission,
  creates: true,
});
export const listSubmissions = operation({
  id: 'listSubmissions',
  method: 'GET',
  path: '/api/submissions',
  tag: 'submissions',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: "A student's own submissions, or one student's for a coach; newest first.",
  query: page.extend({ studentId: Id.optional() }),
  reply: z.object({ items: z.array(Submission), next: Cursor.nullable() }),
});
export const readSubmission = operation({
  id: 'readSubmission',
  method: 'GET',
  path: '/api/submissions/{id}',
  tag: 'submissions',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'One submission with its clips.',
  params: idParam,
  reply: Submission,
});
export const correctSubmission = operation({
  id: 'correctSubmission',
  method: 'PATCH',
  path: '/api/submissions/{id}',
  tag: 'submissions',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary:
    'Put right how a swing was sent: its student until it is answered, or the coach who has claimed it.',
  params: idParam,
  body: Correction,
  reply: Submission,
  guarded: true,
});
export const addClip = operation({
  id: 'addClip',
  method: 'POST',
  path: '/api/submissions/{id}/clips',
  tag: 'submissions',
  who: ['student'],
  status: 200,
  summary: 'Put another clip in place of one that was refused.',
  params: idParam,
  body: z.object({ clipId: Id }),
  reply: Submission,
});
export const readClip = operation({
  id: 'readClip',
  method: 'GET',
  path: '/api/clips/{id}',
  tag: 'submissions',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'One clip: how far it is, or why it was refused.',
  params: idParam,
  reply: Clip,
});
export const claimSubmission = operation({
  id: 'claimSubmission',
  method: 'POST',
  path: '/api/submissions/{id}/claim',
  tag: 'inbox',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Take a submission, or renew a claim; it lapses after thirty minutes.',
  params: idParam,
  reply: Submission,
});
export const releaseSubmission = operation({
  id: 'releaseSubmission',
  method: 'POST',
  path: '/api/submissions/{id}/release',
  tag: 'inbox',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Give a claimed submission back to the inbox.',
  params: idParam,
  reply: Submission,
});
export const handOverSubmission = operation({
  id: 'handOverSubmission',
  method: 'POST',
  path: '/api/submissions/{id}/hand-over',
  tag: 'inbox',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Give a submission to another coach with a line of why; the claim is theirs for four hours.',
  params: idParam,
  body: z.object({ to: Id, why: z.string().trim().min(1, 'Say why in a line.').max(200) }),
  reply: Submission,
});
export const acknowledgePain = operation({
  id: 'acknowledgePain',
  method: 'POST',
  path: '/api/submissions/{id}/pain-seen',
  tag: 'inbox',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'Say that a pain report was read; unpins the row. Practice stays on hold until the student is well.',
  params: idParam,
  reply: Submission,
});
export const askToFilmAgain = operation({
  id: 'askToFilmAgain',
  method: 'POST',
  path: '/api/submissions/{id}/film-again',
  tag: 'inbox',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Ask for a better clip, with a reason.',
  params: idParam,
  body: z.object({
    reason: z.enum([
      'club-out-of-picture',
      'too-dark',
      'camera-moves',
      'wrong-angle',
      'cut-short',
      'too-far',
    ]),
  }),
  reply: Submission,
});
