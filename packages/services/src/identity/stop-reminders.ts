import { ProblemError } from '@ballfirst/contracts/problems';
import { stopNudges } from '@ballfirst/db/crossings/stop-nudges';
import type { Reply } from '../operation-types.ts';
import type { IdentityCall } from './call.ts';
import { limitTries } from './limit-tries.ts';

/** Ends all reminders by the link of a letter, without signing in; again is no error. @throws ProblemError not-found, too-many-tries */
export const stopReminders = async ({
  resources,
  input,
  address,
}: IdentityCall<'stopReminders'>): Promise<Reply<'stopReminders'>> => {
  await limitTries({ resources, what: 'link', email: input.token, address });
  const stopped = await stopNudges(resources.db, { token: input.token, now: resources.clock.now() });
  if (!stopped) throw new ProblemError('not-found');
  return null;
};
