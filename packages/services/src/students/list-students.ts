import { ProblemError } from '@ballfirst/contracts/problems';
import type { Tx } from '@ballfirst/db/with-academy';
import { workingHoursOf } from '../academy/working-hours-of.ts';
import { requireStaff } from '../authorise.ts';
import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import { pageOf, placeOf } from '../keyset.ts';
import type { Call, Reply } from '../operation-types.ts';
import { verdictsOf } from '../verdicts/verdicts-of.ts';
import { lineInclude, studentRowOf } from './student-row-of.ts';

/** The last row of the page before; a name may be longer than a cursor, so the cursor holds the id alone. */
const nameAt = async (tx: Tx, ctx: Context, cursor: string): Promise<{ name: string; id: string }> => {
  const { academyId } = ctx;
  const { id } = placeOf(cursor);
  const row = await tx.student.findUnique({
    where: { academyId_id: { academyId, id } },
    include: { membership: true },
  });
  if (row === null) throw new ProblemError('bad-request');
  return { name: row.membership.name, id };
};

/** The students of the academy, by name. */
export const listStudents = async ({ ctx, input }: Call<'listStudents'>): Promise<Reply<'listStudents'>> => {
  requireStaff(ctx);
  return inTransaction(ctx, async (tx) => {
    const { academyId } = ctx;
    const academy = await tx.academy.findUniqueOrThrow({ where: { id: academyId } });
    const after = input.after === undefined ? null : await nameAt(tx, ctx, input.after);
    const rows = await tx.student.findMany({
      where: {
        academyId,
        ...(input.standing === undefined ? {} : { standing: input.standing }),
        ...(after === null
          ? {}
          : {
              OR: [
                { membership: { name: { gt: after.name } } },
                { membership: { name: after.name }, id: { gt: after.id } },
              ],
            }),
      },
      include: lineInclude,
      orderBy: [{ membership: { name: 'asc' } }, { id: 'asc' }],
      take: input.limit + 1,
    });
    const page = pageOf(rows, input.limit, (row) => ({ key: '', id: row.id }));
    const working = workingHoursOf(academy);
    const now = ctx.resources.clock.now();
    const ids = page.items.map(({ id }) => id);
    const verdicts = await verdictsOf(tx, academyId, ids);
    return {
      items: page.items.map((row) => studentRowOf(row, working, now, verdicts.get(row.id))),
      next: page.next,
    };
  });
};
