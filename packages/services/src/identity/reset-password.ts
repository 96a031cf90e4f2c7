import { ProblemError } from '@ballfirst/contracts/problems';
import { membershipsOfPerson } from '@ballfirst/db/crossings/memberships-of-person';
import { resetPassword as usedUp } from '@ballfirst/db/crossings/reset-password';
import type { Reply } from '../operation-types.ts';
import type { IdentityCall, SignedIn } from './call.ts';
import { limitTries } from './limit-tries.ts';
import { meOf } from './me-of.ts';
import { hashPassword } from './password.ts';
import { readActor } from './read-actor.ts';
import { openSession, tokenHash } from './session.ts';

/**
 * A new password by the link of a letter. The link works once; every session of the person ends, and one begins here.
 * @throws ProblemError link-used-up, too-many-tries
 */
export const resetPassword = async ({
  resources,
  input,
  address,
  device,
}: IdentityCall<'resetPassword'>): Promise<SignedIn<Reply<'resetPassword'>>> => {
  await limitTries({ resources, what: 'link', email: input.token, address });
  const now = resources.clock.now();
  const hash = await hashPassword(input.password);
  const personId = await usedUp(resources.db, { tokenHash: tokenHash(input.token), hash, now });
  if (personId === null) throw new ProblemError('link-used-up');
  const [only, second] = await membershipsOfPerson(resources.db, { personId });
  const academyId = only !== undefined && second === undefined ? only.academyId : null;
  const opened = await openSession({ resources, personId, academyId, device });
  const actor = await readActor({ resources, token: opened.token });
  if (actor === null) throw new ProblemError('unexpected');
  return { reply: await meOf(resources, actor), opened };
};
