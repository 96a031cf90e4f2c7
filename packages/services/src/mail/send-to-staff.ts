import type { Context } from '../context.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Composed } from './letters/compose.ts';
import { sendLetter } from './send-letter.ts';
import type { Told } from './send-to-student.ts';

/**
 * Sends a letter to every coach and manager of the academy, each once for the event. One that fails does not keep it
 * from the others; the error is thrown at the end, and the job sends what is missing.
 */
export const sendToStaff = async (
  ctx: Context,
  it: {
    readonly eventId: string;
    readonly kind: string;
    readonly academyName: string;
    /** Coaches and managers unless said. */
    readonly roles?: readonly ('coach' | 'manager')[];
    readonly letterFor: (name: string) => Composed;
  },
): Promise<Told> => {
  const { academyId } = ctx;
  const staff = await inTransaction(ctx, (tx) =>
    tx.membership.findMany({
      where: { academyId, role: { in: [...(it.roles ?? ['coach', 'manager'])] }, endedAt: null },
      orderBy: { id: 'asc' },
    }),
  );
  let sent = 0;
  const failures: unknown[] = [];
  for (const { id, name, email } of staff) {
    const { eventId, kind, academyName } = it;
    const to = { membershipId: id, name, address: email };
    try {
      const done = await sendLetter({
        ctx,
        input: { eventId, kind, copy: id, to, academyName, letter: it.letterFor(name) },
      });
      if (done.sent) sent += 1;
    } catch (error) {
      failures.push(error);
    }
  }
  if (failures.length > 0) throw new AggregateError(failures, `${failures.length} letters did not leave.`);
  return { sent };
};
