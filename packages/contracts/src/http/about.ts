import { z } from 'zod';
import { operation } from '../operation.ts';
import {
  AgeGroup,
  Hand,
  Id,
  Instant,
  LocalDate,
  Outcome,
  Pain,
  ProgrammeStatus,
  Standing,
  SubmissionStatus,
  Verdict,
} from '../words.ts';
import { LineTest, Units } from './line-tests.ts';
import { PracticeMeans } from './means.ts';
import { Progress } from './practice.ts';
import { idParam, Submission } from './submissions.ts';

/** A private note about a student; version 0: none was written yet. */
export const CoachNote = z.object({
  words: z.string(),
  version: z.number().int(),
  by: z.string().nullable(),
  at: Instant.nullable(),
});
/** What happened with a student, one thing a line. */
export const TimelineItem = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('standing'), id: Id, at: Instant, to: Standing, reason: z.string() }),
  z.object({
    kind: z.literal('swing'),
    id: Id,
    at: Instant,
    club: Submission.shape.club,
    fault: Outcome.nullable(),
    status: SubmissionStatus,
    pain: Pain,
    words: z.string(),
  }),
  z.object({
    kind: z.literal('reply'),
    id: Id,
    at: Instant,
    submissionId: Id,
    by: z.string(),
    cause: z.string().nullable(),
    /** Whether it was opened, and when the student said to have read it. */
    read: z.boolean(),
    saidReadAt: Instant.nullable(),
  }),
  z.object({ kind: z.literal('programme'), id: Id, at: Instant, cause: z.string(), drill: z.string() }),
  z.object({
    kind: z.literal('entry'),
    id: Id,
    at: Instant,
    drill: z.string(),
    rung: z.string(),
    balls: z.number().int(),
    clean: z.number().int(),
    verdict: Verdict,
    pain: Pain,
  }),
  z.object({
    kind: z.literal('question'),
    id: Id,
    at: Instant,
    replyId: Id,
    voice: z.enum(['student', 'coach']),
    words: z.string(),
  }),
  z.object({
    kind: z.literal('lesson'),
    id: Id,
    at: Instant,
    localDate: LocalDate,
    by: z.string(),
    words: z.string(),
  }),
  LineTest.extend({ kind: z.literal('line-test') }),
]);
export const AboutStudent = z.object({
  student: z.object({ id: Id, name: z.string(), hand: Hand, ageGroup: AgeGroup, units: Units }),
  /** As the student told them; the note about the body is given to coaches only. */
  means: PracticeMeans,
  note: CoachNote,
  /** The last cause that was answered, its drill and how it goes; null before the first programme. */
  last: z
    .object({
      cause: z.string(),
      drill: z.string(),
      rung: z.string(),
      status: ProgrammeStatus,
      since: Instant,
      entries: z.number().int(),
      balls: z.number().int(),
      clean: z.number().int(),
      /** The drill that supports it, and what was practised of that. */
      second: z
        .object({
          drill: z.string(),
          rung: z.string().nullable(),
          entries: z.number().int(),
          balls: z.number().int(),
          clean: z.number().int(),
        })
        .nullable(),
    })
    .nullable(),
  progress: Progress.nullable(),
  lineTest: LineTest.nullable(),
  /** The newest first, eighty at most. */
  timeline: z.array(TimelineItem),
  /** Whether there is more than the timeline shows. */
  older: z.boolean(),
});

export const readAbout = operation({
  id: 'readAbout',
  method: 'GET',
  path: '/api/students/{id}/about',
  tag: 'students',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'What a coach wants to know of a student while looking at a swing: wishes, note, last drill, timeline.',
  params: idParam,
  reply: AboutStudent,
});
export const saveCoachNote = operation({
  id: 'saveCoachNote',
  method: 'PUT',
  path: '/api/students/{id}/note',
  tag: 'students',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'Keep the private note about a student; students never see it. The first save sends If-Match: "0".',
  params: idParam,
  body: z.object({ words: z.string().trim().max(4000) }),
  reply: CoachNote,
  guarded: true,
});
export const noteLesson = operation({
  id: 'noteLesson',
  method: 'POST',
  path: '/api/students/{id}/lessons',
  tag: 'students',
  who: ['coach', 'manager'],
  status: 201,
  summary: 'Note a lesson that was given in person; it stands on the timeline.',
  params: idParam,
  body: z.object({
    localDate: LocalDate,
    words: z.string().trim().min(1, 'Write what was worked on.').max(1000),
  }),
  reply: AboutStudent,
  creates: true,
});
