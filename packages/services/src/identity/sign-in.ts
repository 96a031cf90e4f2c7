import { ProblemError } from '@ballfirst/contracts/problems';
import { membershipsOfPerson } from '@ballfirst/db/crossings/memberships-of-person';
import { signInLookup } from '@ballfirst/db/crossings/sign-in-lookup';
import type { Reply } from '../operation-types.ts';
import type { IdentityCall, SignedIn } from './call.ts';
import { limitTries } from './limit-tries.ts';
import { meOf } from './me-of.ts';
import { passwordFits } from './password.ts';
import { readActor } from './read-actor.ts';
import { openSession } from './session.ts';

/**
 * Signs in with an address and a password. An address that nobody has gives the same answer after the same work.
 * A person of one academy is in it at once; of several, chooses first.
 * @throws ProblemError wrong-sign-in, too-many-tries
 */
export const signIn = async ({
  resources,
  input,
  address,
  device,
}: IdentityCall<'signIn'>): Promise<SignedIn<Reply<'signIn'>>> => {
  const { email, password } = input;
  await limitTries({ resources, what: 'sign-in', email, address });
  const account = await signInLookup(resources.db, { email });
  const fits = await passwordFits(password, account?.hash ?? null);
  if (account === null || !fits) throw new ProblemError('wrong-sign-in');
  const memberships = await membershipsOfPerson(resources.db, { personId: account.personId });
  const [only, second] = memberships;
  const academyId = only !== undefined && second === undefined ? only.academyId : null;
  const opened = await openSession({ resources, personId: account.personId, academyId, device });
  const actor = await readActor({ resources, token: opened.token });
  if (actor === null) throw new ProblemError('unexpected');
  return { reply: await meOf(resources, actor), opened };
};
