import { z } from 'zod';
import { operation } from '../operation.ts';
import { AgeGroup, Cursor, Hand, Id, Instant, LocalDate, Standing } from '../words.ts';
import { PracticeMeans } from './means.ts';
import { Progress } from './practice.ts';
import { idParam } from './submissions.ts';

export const StudentRow = z.object({
  id: Id,
  name: z.string(),
  email: z.string(),
  standing: Standing,
  hand: Hand,
  ageGroup: AgeGroup,
  trialDay: z.number().int().nullable(),
  trialEndsAt: Instant.nullable(),
  joinedAt: Instant,
  firstSwingAt: Instant.nullable(),
  lastSwingAt: Instant.nullable(),
  lastReplyAt: Instant.nullable(),
  /** Working hours from the last answered swing being sent to its reply. */
  replyHours: z.number().nullable(),
  practice: z.object({
    entries: z.number().int(),
    balls: z.number().int(),
    clean: z.number().int(),
    days: z.number().int(),
    /** Days with practice in the last seven, of the days a week that were planned. */
    daysThisWeek: z.number().int(),
    daysPlanned: z.number().int(),
  }),
  verdict: Progress.shape.verdict.nullable(),
  cause: z.string().nullable(),
  rung: z.string().nullable(),
  flags: z.array(z.enum(['waiting', 'pain', 'consent', 'unread'])),
});
export const StudentDetail = StudentRow.extend({
  progress: Progress.nullable(),
  /** As the student told them; the note about the body is given to coaches only. */
  means: PracticeMeans,
  standings: z.array(
    z.object({ from: Standing.nullable(), to: Standing, reason: z.string(), by: z.string(), at: Instant }),
  ),
  weeks: z.array(
    z.object({
      week: LocalDate,
      entries: z.number().int(),
      balls: z.number().int(),
      clean: z.number().int(),
      days: z.number().int(),
      swings: z.number().int(),
      tallyBalls: z.number().int(),
      tallyFat: z.number().int(),
    }),
  ),
});
const page = z.object({
  after: Cursor.optional(),
  limit: z.coerce.number().int().min(1).max(100).default(50),
});

export const listStudents = operation({
  id: 'listStudents',
  method: 'GET',
  path: '/api/students',
  tag: 'students',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The students of the academy, by name.',
  query: page.extend({ standing: Standing.optional() }),
  reply: z.object({ items: z.array(StudentRow), next: Cursor.nullable() }),
});
export const readStudent = operation({
  id: 'readStudent',
  method: 'GET',
  path: '/api/students/{id}',
  tag: 'students',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'One student with the history of standing and the weeks.',
  params: idParam,
  reply: StudentDetail,
});
export const changeStanding = operation({
  id: 'changeStanding',
  method: 'POST',
  path: '/api/students/{id}/standing',
  tag: 'students',
  who: ['manager'],
  status: 201,
  summary: 'Change the standing of a student; kept in its history.',
  params: idParam,
  body: z.object({ to: Standing, reason: z.string().trim().max(300) }),
  reply: StudentDetail,
  creates: true,
});
export const extendTrial = operation({
  id: 'extendTrial',
  method: 'POST',
  path: '/api/students/{id}/trial',
  tag: 'students',
  who: ['manager'],
  status: 201,
  summary: 'Give a trial more days, also one that has just ended; kept in the history.',
  params: idParam,
  body: z.object({
    days: z.number().int().min(1).max(60),
    reason: z.string().trim().min(1, 'Say why.').max(300),
  }),
  reply: StudentDetail,
  creates: true,
});
export const TrialRow = z.object({
  student: z.object({ id: Id, name: z.string() }),
  day: z.number().int(),
  days: z.number().int(),
  endsAt: Instant,
  firstSwingAt: Instant.nullable(),
  firstReplyAt: Instant.nullable(),
  replyHours: z.number().nullable(),
  replyReadAt: Instant.nullable(),
  practiceEntries: z.number().int(),
  rungsPassed: z.number().int(),
  /** Where this trial stands still and what to do about it, in words. */
  stop: z.enum(['no-first-swing', 'waits-for-us', 'reply-unread', 'held', 'no-practice', 'moving', 'ending']),
  nextAction: z.string(),
  joinAskedAt: Instant.nullable(),
});
export const readTrials = operation({
  id: 'readTrials',
  method: 'GET',
  path: '/api/trials',
  tag: 'students',
  who: ['manager'],
  status: 200,
  summary: 'Open trials, who is about to lapse and why, and the share that becomes paid.',
  query: page,
  reply: z.object({
    items: z.array(TrialRow),
    next: Cursor.nullable(),
    /** Of all begun trials, with leaving and lapsing as other ends and open ones censored; null before the first end. */
    incidence: z
      .object({
        trials: z.number().int(),
        open: z.number().int(),
        share: z.number(),
        low: z.number(),
        high: z.number(),
        steps: z.array(
          z.object({ day: z.number().int(), share: z.number(), low: z.number(), high: z.number() }),
        ),
      })
      .nullable(),
    matured: z.object({
      trials: z.number().int(),
      paid: z.number().int(),
      share: z.number().nullable(),
      low: z.number().nullable(),
      high: z.number().nullable(),
    }),
  }),
});
export const MailRow = z.object({
  id: Id,
  to: z.string(),
  kind: z.string(),
  subject: z.string(),
  text: z.string(),
  at: Instant,
});
export const listMail = operation({
  id: 'listMail',
  method: 'GET',
  path: '/api/mail',
  tag: 'students',
  who: ['manager'],
  status: 200,
  summary: 'Messages the service sent, newest first.',
  query: page,
  reply: z.object({ items: z.array(MailRow), next: Cursor.nullable() }),
});
export const listDrills = operation({
  id: 'listDrills',
  method: 'GET',
  path: '/api/library/drills',
  tag: 'library',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The drills that can be given.',
  reply: z.object({
    items: z.array(
      z.object({
        id: z.string(),
        name: z.string(),
        purpose: z.string(),
        causes: z.array(z.string()),
        places: z.array(z.string()),
        minutes: z.number(),
        cautions: z.array(z.string()).min(1),
      }),
    ),
  }),
});
