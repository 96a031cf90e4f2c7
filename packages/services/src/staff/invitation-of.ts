import type { Invitation, Membership } from '@ballfirst/db/generated/client';
import type { Reply } from '../operation-types.ts';
import { staffRoleOf } from './staff-role-of.ts';

/** An open invitation as a manager sees it. */
export const invitationOf = (
  row: Invitation & { readonly by: Membership },
  now: Date,
): Reply<'inviteStaff'> => ({
  id: row.id,
  name: row.name,
  email: row.email,
  role: staffRoleOf(row.role),
  by: row.by.name,
  createdAt: row.createdAt.toISOString(),
  expiresAt: row.expiresAt.toISOString(),
  expired: row.expiresAt <= now,
});
