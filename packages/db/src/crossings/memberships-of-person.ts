import { namedCall, type Pooled } from '../named-call.ts';

export type MembershipOfPerson = {
  academyId: string;
  slug: string;
  name: string;
  membershipId: string;
  role: 'coach' | 'manager' | 'student';
};

const statement = {
  name: 'memberships_of_person',
  text: 'SELECT * FROM crossing.memberships_of_person($1)',
};

/** A person's running memberships with their academies, by the academy's name. */
export const membershipsOfPerson = (db: Pooled, input: { personId: string }): Promise<MembershipOfPerson[]> =>
  namedCall<MembershipOfPerson>(db, statement, [input.personId]);
