import { ProblemError } from '@ballfirst/contracts/problems';
import type { SessionActor } from '@ballfirst/db/crossings/session-actor';
import type { Context, Resources } from './context.ts';

/**
 * The context of a request with a session.
 * @throws ProblemError choose-academy when none of the person's academies is chosen
 */
export const contextOf = (request: {
  readonly resources: Resources;
  readonly actor: SessionActor;
  readonly requestId: string;
  readonly once?: Context['once'];
}): Context => {
  const { actor, resources, requestId, once } = request;
  const { academyId, membershipId, role } = actor;
  if (academyId === null || membershipId === null || role === null) throw new ProblemError('choose-academy');
  return {
    academyId,
    actor: {
      kind: 'person',
      personId: actor.personId,
      membershipId,
      role,
      studentId: actor.studentId,
      name: actor.name,
    },
    resources,
    requestId,
    ...(once === undefined ? {} : { once }),
  };
};

/** The context of a job: the system acting in one academy. */
export const systemContext = (request: {
  readonly resources: Resources;
  readonly academyId: string;
  readonly job: string;
  readonly requestId: string;
}): Context => ({
  academyId: request.academyId,
  actor: { kind: 'system', job: request.job },
  resources: request.resources,
  requestId: request.requestId,
});
