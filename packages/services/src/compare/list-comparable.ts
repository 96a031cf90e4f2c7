import { Tally } from '@ballfirst/contracts/words';
import { requireStaff } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { findSubmission } from '../submissions/lock-submission.ts';
import { bestOf } from './best-of.ts';
import { comparableInclude, comparableOf } from './comparable-of.ts';

/** As many earlier swings, and as many of the collection, as a list can still be chosen from. */
const most = 30;

/**
 * What the swing on the desk can be compared with: the student's earlier ones, the newest first, and the academy's own
 * collection by name. Only clips that can be stepped through.
 * @throws ProblemError not-found
 */
export const listComparable = async ({
  ctx,
  input,
}: Call<'listComparable'>): Promise<Reply<'listComparable'>> => {
  requireStaff(ctx);
  const { academyId } = ctx;
  return inTransaction(ctx, async (tx) => {
    const { id, studentId, sentAt } = await findSubmission(tx, ctx, input.id);
    const earlier = await tx.submission.findMany({
      where: {
        academyId,
        studentId,
        id: { not: id },
        sentAt: { lte: sentAt },
        clips: { some: { status: 'ready' } },
      },
      include: {
        clips: { where: { status: 'ready' }, include: comparableInclude, orderBy: { createdAt: 'asc' } },
      },
      orderBy: [{ sentAt: 'desc' }, { id: 'desc' }],
      take: most,
    });
    const kept = await tx.modelSwing.findMany({
      where: { academyId, endedAt: null, clip: { status: 'ready' } },
      include: { clip: { include: comparableInclude } },
      orderBy: [{ name: 'asc' }, { id: 'asc' }],
      take: most,
    });
    const [last] = earlier;
    const best = bestOf(earlier.map((it) => ({ ...it, ...Tally.parse(it.tally) })));
    const own = earlier.flatMap((it) =>
      it.clips.map((clip) =>
        comparableOf(clip, { from: 'student', name: null, last: it.id === last?.id, best: it.id === best }),
      ),
    );
    const models = kept.map(({ clip, name }) =>
      comparableOf(clip, { from: 'collection', name, last: false, best: false }),
    );
    return { items: [...own, ...models].filter((one) => one !== null) };
  });
};
