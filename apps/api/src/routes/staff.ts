import { readCoaches } from '@ballfirst/services/coaches/read-coaches';
import { endStaff } from '@ballfirst/services/staff/end-staff';
import { inviteStaff } from '@ballfirst/services/staff/invite-staff';
import { listStaff } from '@ballfirst/services/staff/list-staff';
import { revokeInvitation } from '@ballfirst/services/staff/revoke-invitation';
import { type Mounting, mount } from '../door/mount.ts';

export const staffRoutes = (at: Mounting): void => {
  mount(at, 'readCoaches', readCoaches);
  mount(at, 'listStaff', listStaff);
  mount(at, 'inviteStaff', inviteStaff);
  mount(at, 'revokeInvitation', revokeInvitation);
  mount(at, 'endStaff', endStaff);
};
