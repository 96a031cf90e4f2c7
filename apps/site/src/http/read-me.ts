import { AnsweredProblem, answerOf, type Reply } from '@ballfirst/contracts/client';
import { redirect } from 'next/navigation';
import { cache } from 'react';
import { pageApi } from './page-api.ts';
import { signInPath } from './read-page.ts';

export type Me = Reply<'readMe'>;
export type Role = NonNullable<Me['role']>;
export type Member = Me & {
  academy: NonNullable<Me['academy']>;
  role: Role;
  membershipId: string;
};

/** Who looks, or null when signed out; asked once a request. */
export const readMe = cache(async (): Promise<Me | null> => {
  try {
    return await answerOf((await pageApi()).GET('/api/me'));
  } catch (error) {
    if (error instanceof AnsweredProblem && error.code === 'not-signed-in') return null;
    throw error;
  }
});

export const isMember = (me: Me): me is Member =>
  me.academy !== null && me.role !== null && me.membershipId !== null;

/** Lets only these roles see the page under `path`. */
export const requireRole = async (path: string, roles: readonly Role[]): Promise<Member> => {
  const me = await readMe();
  if (me === null || !isMember(me)) redirect(signInPath(path));
  if (!roles.includes(me.role)) redirect('/');
  return me;
};
