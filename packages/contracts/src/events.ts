import { z } from 'zod';
import { Id, Standing } from './words.ts';

/**
 * What verbs tell the world, written to the outbox in the verb's own transaction: kind and ids only.
 * The worker reads everything else from the database, which alone is the truth.
 */
export const events = {
  'student.joined': z.object({ studentId: Id }),
  'reset.asked': z.object({ membershipId: Id }),
  'invitation.made': z.object({ invitationId: Id }),
  'guardian.asked': z.object({ consentId: Id }),
  'clip.uploaded': z.object({ clipId: Id }),
  'clip.prepared': z.object({ clipId: Id }),
  'submission.sent': z.object({ submissionId: Id }),
  'submission.corrected': z.object({ submissionId: Id }),
  'submission.claimed': z.object({ submissionId: Id }),
  'submission.released': z.object({ submissionId: Id }),
  'submission.handed-over': z.object({ submissionId: Id }),
  'submission.lapsed': z.object({ submissionId: Id }),
  'submission.pain-seen': z.object({ submissionId: Id }),
  'submission.film-again': z.object({ submissionId: Id }),
  'reply.sent': z.object({ replyId: Id }),
  'practice.logged': z.object({ entryId: Id }),
  'practice.held': z.object({ programmeId: Id }),
  'concern.raised': z.object({ concernId: Id }),
  'concern.claimed': z.object({ concernId: Id }),
  'concern.released': z.object({ concernId: Id }),
  'concern.closed': z.object({ concernId: Id }),
  'reply.corrected': z.object({ replyId: Id, version: z.number().int() }),
  'question.answered': z.object({ questionId: Id }),
  'join.asked': z.object({ studentId: Id }),
  'nudge.due': z.object({ nudgeId: Id }),
  'check-in.due': z.object({ checkInId: Id }),
  'standing.changed': z.object({ studentId: Id, to: Standing }),
} as const;

export type EventKind = keyof typeof events;
export type EventPayload<K extends EventKind> = z.infer<(typeof events)[K]>;
export const eventKinds = Object.keys(events) as [EventKind, ...EventKind[]];

/** What the inbox of a coach changes by: told to open pages as it happens (`http/live.ts`). */
export const liveKinds = [
  'clip.prepared',
  'submission.sent',
  'submission.corrected',
  'submission.claimed',
  'submission.released',
  'submission.handed-over',
  'submission.lapsed',
  'submission.pain-seen',
  'submission.film-again',
  'reply.sent',
  'concern.raised',
  'concern.claimed',
  'concern.released',
  'concern.closed',
] as const satisfies readonly EventKind[];

/** An event as the queue carries it. */
export const Envelope = z.object({ id: Id, academyId: Id, kind: z.enum(eventKinds), payload: z.unknown() });
export type Envelope = z.infer<typeof Envelope>;
