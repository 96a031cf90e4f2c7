import type { Tx } from '@ballfirst/db/with-academy';
import type { Reply } from '../operation-types.ts';

type Line = Reply<'readReply'>['thread'][number];

/** The thread under a reply, oldest line first. */
export const threadOf = async (tx: Tx, academyId: string, replyId: string): Promise<Line[]> => {
  const rows = await tx.question.findMany({
    where: { academyId, replyId },
    include: { by: { select: { name: true } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
  });
  return rows.map(({ id, voice, by, words, at }) => ({
    id,
    voice: voice === 'coach' ? 'coach' : 'student',
    name: by.name,
    words,
    at: at.toISOString(),
  }));
};
