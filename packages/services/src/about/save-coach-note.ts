import { ProblemError } from '@ballfirst/contracts/problems';
import { audit } from '../audit.ts';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { lockStudent } from '../students/lock-student.ts';
import { coachNoteOf } from './coach-note-of.ts';

/**
 * Keeps the private note about a student. Version 0 is the note that is not there yet. The audit says that it was written,
 * never what.
 * @throws ProblemError not-found, changed-meanwhile
 */
export const saveCoachNote = async ({
  ctx,
  input,
}: Call<'saveCoachNote'>): Promise<Reply<'saveCoachNote'>> => {
  const { membershipId } = requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const { id: studentId } = await lockStudent(tx, ctx, input.id);
    const before = await coachNoteOf(tx, academyId, studentId);
    if (before.version !== input.version) throw new ProblemError('changed-meanwhile');
    const version = before.version + 1;
    const written = {
      ...{ words: input.words, version, byMembership: membershipId, at: ctx.resources.clock.now() },
    };
    await tx.coachNote.upsert({
      where: { academyId_studentId: { academyId, studentId } },
      create: { academyId, studentId, ...written },
      update: written,
    });
    await audit(tx, ctx, {
      action: 'save-coach-note',
      subject: `student:${studentId}`,
      detail: { version, length: input.words.length },
    });
    return coachNoteOf(tx, academyId, studentId);
  });
};
