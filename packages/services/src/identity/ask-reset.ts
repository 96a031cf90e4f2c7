import { setTimeout as pause } from 'node:timers/promises';
import { membershipsOfPerson } from '@ballfirst/db/crossings/memberships-of-person';
import { signInLookup } from '@ballfirst/db/crossings/sign-in-lookup';
import type { Resources } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Reply } from '../operation-types.ts';
import { emit } from '../outbox.ts';
import type { IdentityCall } from './call.ts';
import { limitTries } from './limit-tries.ts';

/** Longer than a known address takes, so that the time does not tell which addresses are known. */
const answerAfterMs = 250;

/**
 * Asks for a letter with a link to a new password. The answer is the same, after the same time, whether the address is
 * known; the link itself is made by the worker and stands in the letter alone.
 * @throws ProblemError too-many-tries
 */
export const askReset = async ({
  resources,
  input,
  address,
  requestId,
}: IdentityCall<'askReset'>): Promise<Reply<'askReset'>> => {
  await limitTries({ resources, what: 'reset', email: input.email, address });
  const [done] = await Promise.allSettled([
    askForKnown(resources, input.email, requestId),
    pause(answerAfterMs),
  ]);
  if (done.status === 'rejected') throw done.reason;
  return null;
};

const askForKnown = async (resources: Resources, email: string, requestId: string): Promise<void> => {
  const account = await signInLookup(resources.db, { email });
  if (account === null) return;
  const [first] = await membershipsOfPerson(resources.db, { personId: account.personId });
  if (first === undefined) return;
  const ctx = {
    academyId: first.academyId,
    actor: { kind: 'system', job: 'ask-reset' },
    resources,
    requestId,
  } as const;
  await inTransaction(ctx, (tx) => emit(tx, ctx, 'reset.asked', { membershipId: first.membershipId }));
};
