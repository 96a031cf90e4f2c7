import { z } from 'zod';
import { operation } from '../operation.ts';
import {
  Id,
  Instant,
  LocalDate,
  Pain,
  Place,
  ProgrammeStatus,
  SetUpTick,
  Standing,
  Verdict,
} from '../words.ts';
import { idParam, Submission } from './submissions.ts';
import { HeardTalk } from './talk-through.ts';
import { ReplyFilm } from './teaching.ts';

const Sentence = z.string();
export const StationObject = z.object({
  what: z.string(),
  xMm: z.number(),
  yMm: z.number(),
  lengthMm: z.number(),
  widthMm: z.number(),
  rotationDeg: z.number(),
  label: z.string(),
});
/** A drill as the student reads it: left and right already put in for this player. */
export const DrillCard = z.object({
  id: z.string(),
  name: z.string(),
  purpose: Sentence,
  feel: Sentence,
  steps: z.array(Sentence),
  stations: z.array(
    z.object({
      place: Place,
      needs: z.array(z.string()),
      steps: z.array(Sentence),
      objects: z.array(StationObject),
    }),
  ),
  ladder: z.array(
    z.object({
      id: z.string(),
      ball: z.boolean(),
      balls: z.number().int(),
      speedPercent: z.number(),
      clean: Sentence,
      filmed: z.boolean(),
    }),
  ),
  overCorrection: Sentence,
  exaggeration: z.string(),
  exaggerationHow: Sentence,
  minutes: z.number(),
  ballsAtMost: z.number().int(),
  /** Never empty. */
  cautions: z.array(Sentence).min(1),
});
export const Entry = z.object({
  id: Id,
  /** Which of the programme's drills was practised. */
  drillId: z.string(),
  rung: z.string(),
  balls: z.number().int(),
  clean: z.number().int(),
  filmed: z.boolean(),
  pain: Pain,
  localDate: LocalDate,
  at: Instant,
  verdict: Verdict,
  words: z.string(),
});
/** How one session on the present rung is laid out. */
export const Session = z.object({
  /** Null where only minutes a week were planned. */
  daysPerWeek: z.number().int().nullable(),
  minutes: z.number().int(),
  /** Swings block by block, with a rest between them. */
  blocks: z.array(z.number().int()),
  restSeconds: z.number().int(),
  filmOneOf: z.number().int(),
  mixed: z.boolean(),
  /** The next day is a day of rest. */
  heavy: z.boolean(),
  words: z.array(Sentence),
});
export const Programme = z.object({
  id: Id,
  cause: z.string(),
  causeName: z.string(),
  place: Place,
  weeklyMinutes: z.number().int(),
  rung: z.string(),
  status: ProgrammeStatus,
  holdReason: z.string().nullable(),
  drill: DrillCard,
  session: Session,
  /** A drill that supports the first, after it on the same days. */
  second: z
    .object({
      drill: DrillCard,
      minutes: z.number().int(),
      rung: z.string(),
      /** Its last rung is passed. */
      done: z.boolean(),
    })
    .nullable(),
  /** The opposite miss comes because the drill works: what to do about it. */
  overCorrection: z.object({ how: z.enum(['into', 'through']), words: Sentence }).nullable(),
  entries: z.array(Entry),
  nextCheckIn: z.object({ id: Id, asks: z.enum(['practice', 'clip']), dueAt: Instant }).nullable(),
  createdAt: Instant,
});
/** A line of the short thread under a reply. */
export const ThreadLine = z.object({
  id: Id,
  voice: z.enum(['student', 'coach']),
  name: z.string(),
  words: z.string(),
  at: Instant,
});
/** A reply as the student sees it. `sentence` is the one cause in one sentence for this player's hand. */
export const StudentReply = z.object({
  id: Id,
  submissionId: Id,
  coach: z.string(),
  sentAt: Instant,
  /** When it was opened first. */
  readAt: Instant.nullable(),
  /** When the student said to have read it. */
  saidReadAt: Instant.nullable(),
  sentence: z.string(),
  /** The causes it names, the first first: a film that goes with it is about one of them. */
  causes: z.array(z.string()),
  words: z.string(),
  setUpTicks: z.array(SetUpTick),
  /** Movements beyond the one, each in one sentence; nearly always empty. */
  more: z.array(Sentence),
  frames: z.array(
    z.object({
      clipId: Id,
      frame: z.number().int(),
      timeS: z.number(),
      caption: z.string(),
      rendition: z.string(),
      poster: z.string(),
      /** A still picture of this frame with the marks in it; null until it is made. */
      still: z.string().nullable(),
      /** The picture in words. */
      described: z.string(),
      marks: z.array(z.object({ point: z.string(), name: z.string(), x: z.number(), y: z.number() })),
      widthPx: z.number().int(),
      heightPx: z.number().int(),
    }),
  ),
  programme: Programme.nullable(),
  /** What it said before it was corrected, the newest first. */
  earlier: z.array(z.object({ words: z.string(), teachingClip: ReplyFilm.nullable(), at: Instant })),
  correctedAt: Instant.nullable(),
  version: z.number().int(),
  thread: z.array(ThreadLine),
  /** The coach's voice, replayed on the student's own clip; null: none was recorded. */
  talkThrough: HeardTalk.nullable(),
  /** The academy's film about the cause, at its web address; null: none goes with it. */
  teachingClip: ReplyFilm.nullable(),
  cautions: z.array(z.string()).min(1),
});
/** Whether the drill works: the sentence first, then the balls, then what it rests on. */
export const Progress = z.object({
  verdict: z.enum(['better', 'no-clear-change', 'worse', 'over-correcting']),
  words: z.string(),
  balls: z.string().nullable(),
  basis: z.string(),
  since: Instant,
  latest: Instant,
});
export const Home = z.object({
  /** The one thing to do next. */
  next: z.object({
    kind: z.enum([
      'consent-first',
      'send-first',
      'put-clip-right',
      'wait',
      'read-reply',
      'practise',
      'film-check-in',
      'send-again',
      'hold',
    ]),
    words: z.string(),
    href: z.string().nullable(),
  }),
  standing: Standing,
  trial: z
    .object({ day: z.number().int(), days: z.number().int(), endsAt: Instant, priceWords: z.string() })
    .nullable(),
  programme: Programme.nullable(),
  /** Null until a swing was sent after the one the drill was given for. */
  progress: Progress.nullable(),
  latest: z.array(Submission),
  replies: z.array(z.object({ id: Id, sentAt: Instant, readAt: Instant.nullable(), sentence: z.string() })),
  weeks: z.array(
    z.object({
      week: LocalDate,
      entries: z.number().int(),
      balls: z.number().int(),
      clean: z.number().int(),
      days: z.number().int(),
    }),
  ),
  cautions: z.array(z.string()).min(1),
});

export const readHome = operation({
  id: 'readHome',
  method: 'GET',
  path: '/api/home',
  tag: 'practice',
  who: ['student'],
  status: 200,
  summary: "The student's home: the one thing to do next.",
  reply: Home,
});
export const readReply = operation({
  id: 'readReply',
  method: 'GET',
  path: '/api/replies/{id}',
  tag: 'practice',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'A sent reply with its drill card.',
  params: idParam,
  reply: StudentReply,
});
export const markReplyRead = operation({
  id: 'markReplyRead',
  method: 'POST',
  path: '/api/replies/{id}/read',
  tag: 'practice',
  who: ['student'],
  status: 204,
  summary: 'The reply was opened; only the first time counts.',
  params: idParam,
  reply: z.null(),
});
export const sayReplyRead = operation({
  id: 'sayReplyRead',
  method: 'POST',
  path: '/api/replies/{id}/said-read',
  tag: 'practice',
  who: ['student'],
  status: 200,
  summary: 'The student says to have read the reply; the first time stands.',
  params: idParam,
  reply: z.object({ saidReadAt: Instant }),
});
export const readProgramme = operation({
  id: 'readProgramme',
  method: 'GET',
  path: '/api/programmes/{id}',
  tag: 'practice',
  who: ['student', 'coach', 'manager'],
  status: 200,
  summary: 'A programme with its entries.',
  params: idParam,
  reply: Programme,
});
export const logPractice = operation({
  id: 'logPractice',
  method: 'POST',
  path: '/api/programmes/{id}/practice',
  tag: 'practice',
  who: ['student'],
  status: 201,
  summary: 'Log practice; answers whether the rung is passed, and why.',
  params: idParam,
  body: z.object({
    /** Which of the programme's drills; absent: the first. */
    drillId: z.string().max(60).exactOptional(),
    rung: z.string().max(40),
    balls: z
      .number()
      .int()
      .min(1, 'One swing at least.')
      .max(90, 'No more than 90 swings in one session: log what was really hit, session by session.'),
    clean: z.number().int().min(0).max(90, 'No more than 90 swings in one session.'),
    filmed: z.boolean(),
    pain: Pain,
  }),
  reply: z.object({ entry: Entry, programme: Programme }),
  creates: true,
});
