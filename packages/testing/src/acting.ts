import type { Membership, Student } from '@ballfirst/db/generated/client';
import type { Context } from '@ballfirst/services/context';
import type { SystemWorld } from './system-world.ts';

const roleOf = (role: string): 'coach' | 'manager' | 'student' =>
  role === 'manager' || role === 'student' ? role : 'coach';

/** A member of staff acting in the own academy. */
export const actingStaff = (world: SystemWorld, member: Membership): Context => ({
  ...world.contextOf(member.academyId),
  actor: {
    kind: 'person',
    personId: member.personId,
    membershipId: member.id,
    role: roleOf(member.role),
    studentId: null,
    name: member.name,
  },
});

/** A student acting in the own academy. */
export const actingStudent = (world: SystemWorld, student: Student): Context => ({
  ...world.contextOf(student.academyId),
  actor: {
    kind: 'person',
    personId: student.membershipId,
    membershipId: student.membershipId,
    role: 'student',
    studentId: student.id,
    name: 'A student',
  },
});
