import { ReplyFilm } from '@ballfirst/contracts/http/teaching';
import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import type { z } from 'zod';

type Film = z.output<typeof ReplyFilm>;
type Asked = {
  /** The cause whose film is wanted; null: none. */
  readonly wanted: string | null;
  /** The causes that the reply names. */
  readonly named: readonly string[];
  /** What the draft holds already. */
  readonly held: unknown;
};

const refuse = (message: string): ProblemError =>
  new ProblemError('bad-request', message, [{ path: 'teachingClip', message }]);

/**
 * The academy's film that goes with a reply, as it is kept now. One that was taken away since it was put into the draft
 * goes with it still: its coach has seen it.
 * @throws ProblemError bad-request where there is no film for the cause, or the reply does not name it
 */
export const filmForReply = async (
  tx: Tx,
  academyId: string,
  { wanted, named, held }: Asked,
): Promise<Film | null> => {
  if (wanted === null) return null;
  if (!named.includes(wanted)) throw refuse('This film is about a cause that the reply does not name.');
  const row = await tx.teachingClip.findUnique({ where: { academyId_cause: { academyId, cause: wanted } } });
  if (row !== null && row.removedAt === null) return ReplyFilm.parse(row);
  const before = ReplyFilm.nullable().parse(held ?? null);
  if (before?.cause === wanted) return before;
  throw refuse('The academy keeps no film for this cause any more.');
};
