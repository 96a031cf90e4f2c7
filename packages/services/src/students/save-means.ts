import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStudent } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lockStudent } from './lock-student.ts';
import { meansOf } from './means-of.ts';

const empty = (text: string | null): string | null => (text === null || text === '' ? null : text);

/**
 * Keeps what a student has to practise with. A note about the body is health data: kept with its own permission, and
 * gone with it. The audit says which were told, never what.
 * @throws ProblemError bad-request for a body note without its permission
 */
export const saveMeans = async ({ ctx, input }: Call<'saveMeans'>): Promise<Reply<'saveMeans'>> => {
  const { studentId } = requireStudent(ctx);
  const { body, bodyAgreed, goal, balls, equipment, pains, ...plain } = input;
  if ((empty(body) !== null || (pains ?? []).length > 0) && !bodyAgreed) {
    const message = 'Agree that we keep what you say about your body, or leave it empty.';
    throw new ProblemError('bad-request', message, [{ path: 'bodyAgreed', message }]);
  }
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const student = await lockStudent(tx, ctx, studentId);
    const now = ctx.resources.clock.now();
    const row = await tx.student.update({
      where: { academyId_id: { academyId, id: studentId } },
      data: {
        ...plain,
        ...(balls !== undefined && { balls }),
        ...(equipment && { equipment: [...new Set(equipment)] }),
        ...(pains && { pains: [...new Set(pains)] }),
        ...(!bodyAgreed && { pains: [] }),
        goal: empty(goal),
        bodyNote: bodyAgreed ? empty(body) : null,
        bodyAgreedAt: bodyAgreed ? (student.bodyAgreedAt ?? now) : null,
      },
    });
    const told = Object.entries(input).flatMap(([key, value]) =>
      value === null || value === '' || value === false || (Array.isArray(value) && value.length === 0)
        ? []
        : [key],
    );
    await audit(tx, ctx, { action: 'save-means', subject: `student:${studentId}`, detail: { told } });
    return meansOf(row);
  });
};
