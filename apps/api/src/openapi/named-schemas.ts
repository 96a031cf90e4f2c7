import { Join, Me, PublicAcademy, SignIn } from '@ballfirst/contracts/http/identity';
import { InboxItem, Reason } from '@ballfirst/contracts/http/inbox';
import { DrillCard, Entry, Home, Programme, StudentReply } from '@ballfirst/contracts/http/practice';
import {
  ChosenDiagnosis,
  Evidence,
  Marking,
  Plan,
  RankedCause,
  Reading,
  ReplyDraft,
  ReplyFrame,
  Review,
} from '@ballfirst/contracts/http/review';
import { MailRow, StudentDetail, StudentRow, TrialRow } from '@ballfirst/contracts/http/students';
import { Clip, Mark, NewSubmission, Observation, Submission } from '@ballfirst/contracts/http/submissions';
import { Problem } from '@ballfirst/contracts/problem-body';
import { Tally } from '@ballfirst/contracts/words';
import { z } from 'zod';

const schemas = {
  ChosenDiagnosis,
  Clip,
  DrillCard,
  Entry,
  Evidence,
  Home,
  InboxItem,
  Join,
  MailRow,
  Mark,
  Marking,
  Me,
  NewSubmission,
  Observation,
  Plan,
  Problem,
  Programme,
  PublicAcademy,
  RankedCause,
  Reading,
  Reason,
  ReplyDraft,
  ReplyFrame,
  Review,
  SignIn,
  StudentDetail,
  StudentReply,
  StudentRow,
  Submission,
  Tally,
  TrialRow,
} satisfies Record<string, z.ZodType>;

/** Schemas that stand once under `components` and are referred to by name. */
export const namedSchemas = z.registry<{ id: string }>();
for (const [id, schema] of Object.entries(schemas)) namedSchemas.add(schema, { id });
