import type { Reply } from '../operation-types.ts';
import type { SignedInCall } from './call.ts';
import { meOf } from './me-of.ts';

/** Who is signed in, in which academy and role. */
export const readMe = ({ resources, session }: SignedInCall<'readMe'>): Promise<Reply<'readMe'>> =>
  meOf(resources, session.actor);
