import { z } from 'zod';
import { operation } from '../operation.ts';
import { Session } from './practice.ts';
import { Plan } from './review.ts';
import { idParam } from './submissions.ts';

/** The programme that promises most for a cause under this student's means, and what was left out for which reason. */
export const ProgrammeOffer = z.object({
  cause: z.string(),
  /** Null: nothing fits; `leftOut` says why. */
  plan: Plan.nullable(),
  drillName: z.string().nullable(),
  secondName: z.string().nullable(),
  ballsAtMost: z.number().int().nullable(),
  /** The first session. */
  session: Session.nullable(),
  /** Under which means it was chosen, in one sentence. */
  means: z.string(),
  leftOut: z.array(z.object({ what: z.string(), why: z.string() })),
  /** Empty only where nothing is offered. */
  cautions: z.array(z.string()),
});

export const offerProgramme = operation({
  id: 'offerProgramme',
  method: 'GET',
  path: '/api/submissions/{id}/programme-offer',
  tag: 'review',
  who: ['coach', 'manager'],
  status: 200,
  summary:
    'The programme that promises most for a cause under the days, minutes, place, balls, equipment, pains and age of this student, and what was left out. Without a cause: for the one chosen.',
  params: idParam,
  query: z.object({ cause: z.string().max(60).optional() }),
  reply: ProgrammeOffer,
});
