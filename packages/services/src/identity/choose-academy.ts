import { ProblemError } from '@ballfirst/contracts/problems';
import { chooseAcademy as pointSession } from '@ballfirst/db/crossings/choose-academy';
import type { Reply } from '../operation-types.ts';
import type { SignedInCall } from './call.ts';
import { meOf } from './me-of.ts';
import { readActor } from './read-actor.ts';
import { tokenHash } from './session.ts';

/** Points this session at one of the person's academies. @throws ProblemError not-found where there is no membership */
export const chooseAcademy = async ({
  resources,
  input,
  session,
}: SignedInCall<'chooseAcademy'>): Promise<Reply<'chooseAcademy'>> => {
  const { token } = session;
  const now = resources.clock.now();
  const chosen = await pointSession(resources.db, {
    tokenHash: tokenHash(token),
    academyId: input.academyId,
    now,
  });
  if (!chosen) throw new ProblemError('not-found');
  const actor = await readActor({ resources, token });
  if (actor === null) throw new ProblemError('not-signed-in');
  return meOf(resources, actor);
};
