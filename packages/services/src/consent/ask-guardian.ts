import { ProblemError } from '@ballfirst/contracts/problems';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lockStudent } from '../students/lock-student.ts';
import { hasConsent } from '../students/require-consent.ts';
import { guardianState } from './guardian-state.ts';
import { openConsent } from './open-consent.ts';

/** Letters that one student may have sent to guardians in a day: nobody is written to without end. */
export const asksADay = 5;
const dayMs = 86_400_000;

/** A guardian is somebody else. @throws ProblemError bad-request */
export const requireOther = (guardianEmail: string, studentEmail: string): void => {
  if (guardianEmail !== studentEmail) return;
  const message = 'This is your own address. Give the address of your parent or guardian.';
  throw new ProblemError('bad-request', message, [{ path: 'email', message }]);
};

/**
 * Asks the guardian of a junior for consent by letter. Where consent stands already nothing is sent.
 * @throws ProblemError bad-request, too-many-tries
 */
export const askGuardian = async ({ ctx, input }: Call<'askGuardian'>): Promise<Reply<'askGuardian'>> => {
  const { studentId } = requireStudent(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const student = await lockStudent(tx, ctx, studentId);
    if (hasConsent(student)) return guardianState(tx, ctx, student);
    requireOther(input.email, student.membership.email);
    const since = new Date(ctx.resources.clock.now().getTime() - dayMs);
    const asked = await tx.guardianConsent.count({ where: { academyId, studentId, askedAt: { gt: since } } });
    if (asked >= asksADay) {
      throw new ProblemError(
        'too-many-tries',
        'Five letters went out today. Ask your guardian to look for them.',
      );
    }
    await openConsent(tx, ctx, { studentId, guardian: input, given: null });
    return guardianState(tx, ctx, student);
  });
};
