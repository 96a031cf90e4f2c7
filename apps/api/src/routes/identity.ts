import { chooseAcademy } from '@ballfirst/services/identity/choose-academy';
import { joinAcademy } from '@ballfirst/services/identity/join-academy';
import { readAcademy } from '@ballfirst/services/identity/read-academy';
import { readMe } from '@ballfirst/services/identity/read-me';
import { signIn } from '@ballfirst/services/identity/sign-in';
import { signOut } from '@ballfirst/services/identity/sign-out';
import type { Mounting } from '../door/mount.ts';
import { mountOpen, mountOpening, mountSignedIn } from '../door/mount-identity.ts';

export const identityRoutes = (at: Mounting): void => {
  mountOpening(at, 'signIn', signIn);
  mountOpening(at, 'joinAcademy', joinAcademy);
  mountOpen(at, 'readAcademy', readAcademy);
  mountSignedIn(at, 'readMe', readMe);
  mountSignedIn(at, 'chooseAcademy', chooseAcademy);
  mountSignedIn(at, 'signOut', signOut, (reply) => reply.clearSession());
};
