import { urlOfDatabase } from '@ballfirst/db/migrate/grant-database';

export type RoleName = 'owner' | 'app' | 'queue';

/** In tests each role's password is its name: the servers listen on the loopback only and live for one run. */
export const testPasswords = { owner: 'owner', app: 'app', queue: 'queue' } as const;

/** The connection string of a role on one database of the test server. */
export const roleUrl = (superuserUrl: string, databaseName: string, role: RoleName): string => {
  const url = new URL(urlOfDatabase(superuserUrl, databaseName));
  url.username = role;
  url.password = testPasswords[role];
  return url.toString();
};
