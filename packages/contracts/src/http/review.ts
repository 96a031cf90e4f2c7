import { faults } from '@ballfirst/library/types';
import { z } from 'zod';
import { operation } from '../operation.ts';
import {
  Answer,
  Club,
  Hand,
  Id,
  Instant,
  LocalDate,
  Place,
  SetUpTick,
  SubmissionStatus,
  SwingLength,
  Verdict,
  View,
} from '../words.ts';
import { FatRisk, StudentSet } from './fat-risk.ts';
import { idParam, Mark, Observation, Submission, TrailPoint } from './submissions.ts';
import { ReplyFilm } from './teaching.ts';

const Fault = z.enum(faults);

/** A measurement as shown: value with its doubt (1 SD), read against its band. */
export const Reading = z.object({
  key: z.string(),
  name: z.string(),
  unit: z.enum(['mm', 'deg', 'percent', 'ratio']),
  value: z.number(),
  u: z.number(),
  proxy: z.boolean(),
  band: z.object({ low: z.number().nullable(), high: z.number().nullable(), label: z.string() }).nullable(),
  probabilityBelow: z.number(),
  probabilityAbove: z.number(),
});
export const RankedCause = z.object({
  causeId: z.string(),
  name: z.string(),
  group: z.string(),
  tick: SetUpTick.nullable(),
  probability: z.number(),
  share: z.number(),
  score: z.number(),
  factors: z.array(z.string()),
  /** Why this view cannot show it; null: it can. */
  unseen: z.string().nullable(),
});
export const Marking = z.object({
  clipId: Id,
  version: z.number().int(),
  marks: z.array(Mark),
  observations: z.array(Observation),
  /** The clubhead on one frame after another near the ball: what the lowest point of its arc is read from. */
  trail: z.array(TrailPoint),
});
/** While the order of causes is held back `causes` is empty, `first` and `next` are null. */
export const Evidence = z.object({
  fault: Fault,
  readings: z.array(Reading),
  refusals: z.array(z.object({ key: z.string(), words: z.string() })),
  causes: z.array(RankedCause),
  /** The cause to fix first, by id; null: nothing stands out. */
  first: z.string().nullable(),
  /** The next mark or observation worth making, or null: enough. */
  next: z
    .object({ kind: z.enum(['mark', 'observation']), position: z.string().nullable(), point: z.string() })
    .nullable(),
  /** How often the set meets the ground behind the ball; null where the clubhead is not marked over frames. */
  fatRisk: FatRisk.nullable(),
  methodVersion: z.string(),
});
/** An academy's own base rates by cause id; a cause without one has the library's. */
export const BaseRates = z.record(z.string(), z.number().gt(0).lt(1));
export const ChosenDiagnosis = z.object({
  id: Id,
  fault: Fault,
  chosenCause: z.string(),
  setUpTicks: z.array(SetUpTick),
  overruled: z.boolean(),
  /** Chosen while the order of causes was held back. */
  blind: z.boolean(),
  by: z.string(),
  at: Instant,
});
export const Plan = z.object({
  drillId: z.string().max(60),
  place: Place,
  exaggeration: z.enum(['mild', 'firm', 'strong']),
  weeklyMinutes: z.number().int().min(10).max(600),
  firstCheckInDays: z.number().int().min(1).max(21),
  /** Days a week, and minutes of this drill on each; left out: only minutes a week are planned. */
  daysPerWeek: z.number().int().min(1).max(7).exactOptional(),
  minutesPerDay: z.number().int().min(5).max(240).exactOptional(),
  /** A drill that supports the first, after it on the same days. */
  second: z
    .object({ drillId: z.string().max(60), minutes: z.number().int().min(5).max(240) })
    .nullable()
    .exactOptional(),
});
export const ReplyFrame = z.object({
  clipId: Id,
  frame: z.number().int().min(0),
  position: z.string().max(40),
  caption: z.string().max(200),
});
export const ReplyDraft = z.object({
  id: Id,
  status: z.enum(['draft', 'sending', 'sent']),
  words: z.string(),
  cause: z.string().nullable(),
  setUpTicks: z.array(SetUpTick),
  frames: z.array(ReplyFrame),
  plan: Plan.nullable(),
  version: z.number().int(),
  sentAt: Instant.nullable(),
  /** When a reply on its way goes out; until then it can be taken back. */
  sendsAt: Instant.nullable(),
  correctedAt: Instant.nullable(),
  /** Movements beyond the one cause, and when the coach said that more than one is meant. */
  moreCauses: z.array(z.string()),
  moreAgreedAt: Instant.nullable(),
  /** The academy's film about the cause that goes with it. */
  teachingClip: ReplyFilm.nullable(),
  /** Whether a recorded talk-through goes with it. */
  withTalk: z.boolean(),
});
/** Everything the review screen needs, one request. */
export const Review = z.object({
  submission: Submission,
  marking: z.array(Marking),
  evidence: z.array(Evidence.extend({ clipId: Id })),
  /** What is known of the student's set with this club; null where no clip has the clubhead over frames yet. */
  set: StudentSet.nullable(),
  /** Whether the order of causes is held back until a coach has named one. */
  heldBack: z.boolean(),
  /** The cause that was named while it was held back; null: none was. */
  named: z.string().nullable(),
  /** What the evidence is computed with here and in the browser. */
  baseRates: BaseRates,
  diagnosis: ChosenDiagnosis.nullable(),
  reply: ReplyDraft.nullable(),
  openProgramme: z
    .object({
      id: Id,
      cause: z.string(),
      drillId: z.string(),
      rung: z.string(),
      status: z.string(),
      entries: z.number().int(),
      /** What was practised last, and how it went. */
      last: z
        .object({
          localDate: LocalDate,
          drillId: z.string(),
          rung: z.string(),
          balls: z.number().int(),
          clean: z.number().int(),
          verdict: Verdict,
        })
        .nullable(),
    })
    .nullable(),
  /** What the student told of themselves; null where nothing was told. */
  about: z.object({
    goal: z.string().nullable(),
    usualMiss: z.string().nullable(),
    /** What lengths are told in. */
    units: z.enum(['metric', 'imperial']),
  }),
  earlier: z.array(
    z.object({ id: Id, sentAt: Instant, status: SubmissionStatus, cause: z.string().nullable() }),
  ),
});

const clipParam = z.object({ id: Id, clipId: Id });
const Observations = z.array(z.object({ key: z.string().max(60), answer: Answer })).max(40);
/** One a frame; as many as the arc takes. */
const Trail = z.array(TrailPoint).max(200, 'The clubhead is marked on 200 frames at most.');

/** Marks of a picture that need not be stored anywhere: forty seconds at 240 frames a second at most. */
export const Measuring = z.object({
  setting: z.object({ view: View, hand: Hand, club: Club, swingLength: SwingLength }),
  picture: z.object({
    widthPx: z.number().int().min(16).max(8192),
    heightPx: z.number().int().min(16).max(8192),
    /** The time of each frame, rising. */
    frameTimesS: z.array(z.number().min(0).max(3600)).min(1).max(9600),
  }),
  fault: Fault,
  marks: z.array(Mark).max(200, 'There are more marks than a swing has places: 200 at most.'),
  observations: Observations,
  /** The clubhead over frames near the ball; left out: none. */
  trail: Trail.exactOptional(),
  /** What is known of the student's set beside these marks; left out: they stand alone. */
  set: StudentSet.exactOptional(),
});

export const openReview = operation({
  id: 'openReview',
  method: 'GET',
  path: '/api/submissions/{id}/review',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Everything the review screen needs.',
  params: idParam,
  reply: Review,
});
export const readMarks = operation({
  id: 'readMarks',
  method: 'GET',
  path: '/api/submissions/{id}/clips/{clipId}/marks',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The marks and observations of one clip; the ETag is their version.',
  params: clipParam,
  reply: Marking,
  guarded: false,
});
export const saveMarks = operation({
  id: 'saveMarks',
  method: 'PUT',
  path: '/api/submissions/{id}/clips/{clipId}/marks',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Save all marks and observations of one clip; answers with what they show.',
  params: clipParam,
  body: z.object({
    marks: z.array(Mark).max(200),
    observations: Observations,
    /** Left out: as it is stored. */
    trail: Trail.exactOptional(),
  }),
  reply: z.object({ marking: Marking, evidence: Evidence }),
  guarded: true,
});
export const measureMarks = operation({
  id: 'measureMarks',
  method: 'POST',
  path: '/api/measure',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'What marks and observations show: measurements, causes, what to mark next. Nothing is stored.',
  body: Measuring,
  reply: Evidence,
});
export const chooseDiagnosis = operation({
  id: 'chooseDiagnosis',
  method: 'POST',
  path: '/api/submissions/{id}/diagnosis',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 201,
  summary: 'Choose the one cause that comes first, with up to three set-up ticks.',
  params: idParam,
  body: z.object({ fault: Fault, cause: z.string().max(60), setUpTicks: z.array(SetUpTick).max(4) }),
  reply: ChosenDiagnosis,
  creates: true,
});
export const readDiagnosis = operation({
  id: 'readDiagnosis',
  method: 'GET',
  path: '/api/submissions/{id}/diagnosis',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'The chosen diagnosis and the evidence as computed now.',
  params: idParam,
  reply: z.object({ chosen: ChosenDiagnosis.nullable(), evidence: z.array(Evidence.extend({ clipId: Id })) }),
});
export const showOrder = operation({
  id: 'showOrder',
  method: 'POST',
  path: '/api/submissions/{id}/order',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'Show the order of causes that is held back, without naming a cause first: nothing is learned from it.',
  params: idParam,
  reply: z.object({ heldBack: z.literal(false) }),
});
export const saveReply = operation({
  id: 'saveReply',
  method: 'PUT',
  path: '/api/submissions/{id}/reply',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Save the draft of a reply.  The first save may send If-Match: "0".',
  params: idParam,
  body: z.object({
    words: z.string().max(4000),
    cause: z.string().max(60).nullable(),
    /** Up to three; a fourth needs `moreAgreed`. */
    setUpTicks: z.array(SetUpTick).max(4),
    frames: z.array(ReplyFrame).max(6),
    plan: Plan.nullable(),
    /** Movements beyond the one cause: they need `moreAgreed`. */
    moreCauses: z.array(z.string().max(60)).max(2).exactOptional(),
    /** The coach was asked whether more than one movement and three ticks are meant, and said yes. */
    moreAgreed: z.boolean().exactOptional(),
    /** The cause whose film goes with it: one that the reply names. Left out: none. */
    teachingClip: z.string().max(60).nullable().exactOptional(),
    /** Left out: a recorded talk-through goes with it. */
    withTalk: z.boolean().exactOptional(),
  }),
  reply: ReplyDraft,
  guarded: true,
});
export const sendReply = operation({
  id: 'sendReply',
  method: 'POST',
  path: '/api/submissions/{id}/reply/send',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'Send the reply. For half a minute it can be taken back; then the student is told, the drill becomes the programme, the check-in is set.',
  params: idParam,
  reply: ReplyDraft,
  creates: true,
});
export const undoReply = operation({
  id: 'undoReply',
  method: 'POST',
  path: '/api/submissions/{id}/reply/undo',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary: 'Take a reply back that is on its way: it is a draft again.',
  params: idParam,
  reply: ReplyDraft,
});
export const correctReply = operation({
  id: 'correctReply',
  method: 'PUT',
  path: '/api/replies/{id}/words',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'Correct the words of a reply that has gone out, or its film; what it said before is kept, the student is told.',
  params: idParam,
  body: z.object({
    words: z.string().trim().min(1, 'Write something.').max(4000),
    /** The cause whose film goes with it from now on; null: none; left out: as it was. */
    teachingClip: z.string().max(60).nullable().optional(),
  }),
  reply: ReplyDraft,
  guarded: true,
});
