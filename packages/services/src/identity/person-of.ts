import { ProblemError } from '@ballfirst/contracts/problems';
import { createPerson } from '@ballfirst/db/crossings/create-person';
import { signInLookup } from '@ballfirst/db/crossings/sign-in-lookup';
import { newId } from '@ballfirst/db/ids';
import type { Resources } from '../context.ts';
import { hashPassword, passwordFits } from './password.ts';

/**
 * The person who joins: a new one, or the one who has this address and knows its password. Both ways hash once, so that
 * the time does not tell which it was.
 * @throws ProblemError wrong-sign-in
 */
export const personOf = async (
  resources: Resources,
  joining: { readonly email: string; readonly name: string; readonly password: string },
): Promise<{ id: string; name: string }> => {
  const { email, name, password } = joining;
  const { db, clock } = resources;
  let account = await signInLookup(db, { email });
  if (account === null) {
    const id = newId();
    const hash = await hashPassword(password);
    if (await createPerson(db, { id, email, name, hash, now: clock.now() })) return { id, name };
    // Somebody took the address meanwhile, perhaps this same form sent twice: its password decides.
    account = await signInLookup(db, { email });
  }
  const fits = await passwordFits(password, account?.hash ?? null);
  if (account === null || !fits) throw new ProblemError('wrong-sign-in');
  return { id: account.personId, name: account.name };
};
