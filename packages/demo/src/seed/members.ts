import { Hand, Role } from '@ballfirst/contracts/words';
import { withAcademy } from '@ballfirst/db/with-academy';
import type { Resources } from '@ballfirst/services/context';
import type { Member } from './at-time.ts';

export type Student = Member & { readonly hand: 'right' | 'left' };
export type Members = {
  /** By the part of the address before the @. @throws RangeError where there is nobody */
  coach(key: string): Member;
  student(key: string): Student;
};

const keyOf = (email: string): string => email.slice(0, email.indexOf('@'));

/** The people of a demo academy, found again by their addresses. */
export const membersOf = async (
  resources: Resources,
  academy: { readonly id: string; readonly slug: string },
): Promise<Members> => {
  const { id: academyId, slug } = academy;
  const rows = await withAcademy(resources.db, academyId, (tx) =>
    tx.membership.findMany({
      where: { academyId, email: { endsWith: `@${slug}.example` } },
      include: { student: { select: { id: true, hand: true } } },
    }),
  );
  const byKey = new Map(rows.map((row) => [keyOf(row.email), row]));
  const rowOf = (key: string) => {
    const row = byKey.get(key);
    if (row === undefined) throw new RangeError(`${slug} has nobody called ${key}.`);
    return row;
  };
  const memberOf = (key: string): Member => {
    const { personId, id, role, name, student } = rowOf(key);
    return {
      ...{ academyId, personId, name },
      membershipId: id,
      studentId: student?.id ?? null,
      role: Role.parse(role),
    };
  };
  return {
    coach: memberOf,
    student: (key) => ({ ...memberOf(key), hand: Hand.parse(rowOf(key).student?.hand) }),
  };
};
