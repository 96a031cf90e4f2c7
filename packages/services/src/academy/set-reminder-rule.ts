import { audit } from '../audit.ts';
import { requireManager } from '../authorise.ts';
import { inTransaction } from '../in-transaction.ts';
import type { Call, Reply } from '../operation-types.ts';
import { rulesOf } from './reminder-rules.ts';

/** Switches one reminder on or off for the whole academy. */
export const setReminderRule = async ({
  ctx,
  input,
}: Call<'setReminderRule'>): Promise<Reply<'setReminderRule'>> => {
  requireManager(ctx);
  return inTransaction(ctx, async (tx) => {
    await tx.$queryRaw`SELECT 1 FROM public.academy WHERE id = ${ctx.academyId}::uuid FOR UPDATE`;
    const { nudgesOff } = await tx.academy.findUniqueOrThrow({ where: { id: ctx.academyId } });
    const others = nudgesOff.filter((kind) => kind !== input.kind);
    const off = input.on ? others : [...others, input.kind];
    await tx.academy.update({ where: { id: ctx.academyId }, data: { nudgesOff: off } });
    await audit(tx, ctx, {
      action: 'set-reminder-rule',
      subject: `academy:${ctx.academyId}`,
      detail: { kind: input.kind, on: input.on },
    });
    return rulesOf(off);
  });
};
