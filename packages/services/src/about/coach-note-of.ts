import type { Tx } from '@ballfirst/db/with-academy';
import type { Reply } from '../operation-types.ts';

/** The private note about a student; version 0 where none was written yet. */
export const coachNoteOf = async (
  tx: Tx,
  academyId: string,
  studentId: string,
): Promise<Reply<'saveCoachNote'>> => {
  const row = await tx.coachNote.findUnique({
    where: { academyId_studentId: { academyId, studentId } },
    include: { by: { select: { name: true } } },
  });
  if (row === null) return { words: '', version: 0, by: null, at: null };
  return { words: row.words, version: row.version, by: row.by.name, at: row.at.toISOString() };
};
