import type { Context, Resources } from '@ballfirst/services/context';

/** The same resources at another time: the past of the demo is made by the verbs themselves. */
export const atTime = (resources: Resources, now: Date): Resources => ({
  ...resources,
  clock: { now: () => now },
});

export const hoursBefore = (now: Date, hours: number): Date => new Date(now.getTime() - hours * 3_600_000);

export type Member = {
  readonly academyId: string;
  readonly personId: string;
  readonly membershipId: string;
  readonly studentId: string | null;
  readonly role: 'coach' | 'manager' | 'student';
  readonly name: string;
};

/** The context of one demo person at one time. */
export const contextOf = (resources: Resources, member: Member, now: Date): Context => ({
  academyId: member.academyId,
  actor: {
    kind: 'person',
    personId: member.personId,
    membershipId: member.membershipId,
    role: member.role,
    studentId: member.studentId,
    name: member.name,
  },
  resources: atTime(resources, now),
  requestId: 'demo',
});

export const systemContext = (resources: Resources, academyId: string, now: Date): Context => ({
  academyId,
  actor: { kind: 'system', job: 'demo' },
  resources: atTime(resources, now),
  requestId: 'demo',
});
