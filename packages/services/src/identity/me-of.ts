import { Hand, Standing } from '@ballfirst/contracts/words';
import { membershipsOfPerson } from '@ballfirst/db/crossings/memberships-of-person';
import type { SessionActor } from '@ballfirst/db/crossings/session-actor';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Resources } from '../context.ts';
import type { Reply } from '../operation-types.ts';

type Me = Reply<'readMe'>;

const studentOf = async (
  resources: Resources,
  academyId: string,
  studentId: string,
): Promise<Me['student']> => {
  const row = await withAcademy(resources.db, academyId, (tx) =>
    tx.student.findUnique({ where: { academyId_id: { academyId, id: studentId } } }),
  );
  if (row === null) return null;
  return {
    id: row.id,
    hand: Hand.parse(row.hand),
    standing: Standing.parse(row.standing),
    trialEndsAt: row.trialEndsAt?.toISOString() ?? null,
  };
};

/** Who is signed in, as the contract says it. */
export const meOf = async (resources: Resources, actor: SessionActor): Promise<Me> => {
  const memberships = await membershipsOfPerson(resources.db, { personId: actor.personId });
  const { academyId, academySlug, academyName, academyZone, studentId } = actor;
  return {
    personId: actor.personId,
    name: actor.name,
    email: actor.email,
    academies: memberships.map((it) => ({ id: it.academyId, slug: it.slug, name: it.name, role: it.role })),
    academy:
      academyId === null || academySlug === null || academyName === null || academyZone === null
        ? null
        : { id: academyId, slug: academySlug, name: academyName, zone: academyZone },
    membershipId: actor.membershipId,
    role: actor.role,
    student:
      academyId === null || studentId === null ? null : await studentOf(resources, academyId, studentId),
  };
};
