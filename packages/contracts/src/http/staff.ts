import { z } from 'zod';
import { operation } from '../operation.ts';
import { Id, Instant } from '../words.ts';
import { StaffRole } from './accounts.ts';
import { Email } from './identity.ts';

export const StaffMember = z.object({
  id: Id,
  name: z.string(),
  email: z.string(),
  role: StaffRole,
  since: Instant,
});
export const Invitation = z.object({
  id: Id,
  name: z.string(),
  email: z.string(),
  role: StaffRole,
  by: z.string(),
  createdAt: Instant,
  expiresAt: Instant,
  expired: z.boolean(),
});
const byId = z.object({ id: Id });

export const listStaff = operation({
  id: 'listStaff',
  method: 'GET',
  path: '/api/staff',
  tag: 'staff',
  who: ['manager'],
  status: 200,
  summary: 'Coaches and managers, and the invitations that are still open.',
  reply: z.object({ members: z.array(StaffMember), invitations: z.array(Invitation) }),
});
export const inviteStaff = operation({
  id: 'inviteStaff',
  method: 'POST',
  path: '/api/staff/invitations',
  tag: 'staff',
  who: ['manager'],
  status: 201,
  summary:
    'Invite a coach or a manager by mail; inviting an address again sends a new link and voids the old one.',
  body: z.object({
    name: z.string().trim().min(1, 'Give the name of whom you invite.').max(120),
    email: Email,
    role: StaffRole,
  }),
  reply: Invitation,
  creates: true,
});
export const revokeInvitation = operation({
  id: 'revokeInvitation',
  method: 'DELETE',
  path: '/api/staff/invitations/{id}',
  tag: 'staff',
  who: ['manager'],
  status: 204,
  summary: 'Take an invitation back: its link stops working.',
  params: byId,
  reply: z.null(),
});
export const endStaff = operation({
  id: 'endStaff',
  method: 'DELETE',
  path: '/api/staff/members/{id}',
  tag: 'staff',
  who: ['manager'],
  status: 204,
  summary: 'End the membership of a coach or manager; claims are given back. The last manager stays.',
  params: byId,
  reply: z.null(),
});
