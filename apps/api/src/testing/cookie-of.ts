import { createPerson } from '@ballfirst/db/crossings/create-person';
import { openSession } from '@ballfirst/services/identity/session';
import { cookieName } from '../plugins/session-cookie.ts';
import type { Door } from './open-door.ts';

/** Signs a member in without a password: writes the person where there is none yet, opens a session, gives the cookie. */
export const cookieOf = async (
  door: Door,
  member: { readonly personId: string; readonly academyId: string | null; readonly name: string },
): Promise<string> => {
  const { resources, env } = door;
  const { personId, academyId, name } = member;
  const person = { id: personId, name, email: `${personId}@example.test`, hash: 'nobody', now: door.now };
  await createPerson(resources.db, person);
  const { token } = await openSession({ resources, personId, academyId, device: 'test' });
  return `${cookieName(env)}=${token}`;
};
