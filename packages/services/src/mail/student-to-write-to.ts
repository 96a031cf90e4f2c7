import { ProblemError } from '@ballfirst/contracts/problems';
import { Hand } from '@ballfirst/contracts/words';
import type { PlayingHand } from '@ballfirst/library/words-for-hand';
import { z } from 'zod';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { type StudentRow, studentInclude } from '../rows.ts';

const Guardian = z.object({ guardianName: z.string(), guardianEmail: z.string() });

/** The guardian in a junior's consent; still copied after a withdrawal: a minor is never written to unseen. */
const guardianOf = (student: StudentRow): StudentToWriteTo['guardian'] => {
  const found = Guardian.safeParse(student.consent);
  if (!found.success) return null;
  const { guardianName: name, guardianEmail: address } = found.data;
  return address === student.membership.email ? null : { name, address };
};

export type StudentToWriteTo = {
  readonly student: StudentRow;
  readonly hand: PlayingHand;
  readonly guardian: { readonly name: string; readonly address: string } | null;
};

/**
 * A student with academy and guardian, as letters need them.
 * @returns null when the membership has ended: nobody is written to then
 * @throws ProblemError not-found
 */
export const studentToWriteTo = (ctx: Context, studentId: string): Promise<StudentToWriteTo | null> =>
  inTransaction(ctx, async (tx) => {
    const student = await tx.student.findUnique({
      where: { academyId_id: { academyId: ctx.academyId, id: studentId } },
      include: studentInclude,
    });
    if (student === null) throw new ProblemError('not-found');
    if (student.membership.endedAt !== null) return null;
    return { student, hand: Hand.parse(student.hand), guardian: guardianOf(student) };
  });
