import type { Prisma } from '@ballfirst/db/generated/client';
import { newId } from '@ballfirst/db/ids';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from './context.ts';

export type AuditLine = {
  /** What was done, verb first: `claim-submission`. */
  readonly action: string;
  /** What it was done to: `submission:<id>`. */
  readonly subject: string;
  /** Ids, words of our lists and numbers only: no names, no notes, nothing about health. */
  readonly detail?: Prisma.InputJsonObject;
};

/** Who acts, as the audit names it. */
export const actorName = (ctx: Context): string =>
  ctx.actor.kind === 'person' ? `membership:${ctx.actor.membershipId}` : `system:${ctx.actor.job}`;

/** Writes one audit row in the verb's transaction; a job chains and seals it afterwards. */
export const audit = async (tx: Tx, ctx: Context, line: AuditLine): Promise<void> => {
  await tx.auditEntry.create({
    data: {
      academyId: ctx.academyId,
      id: newId(),
      at: ctx.resources.clock.now(),
      actor: actorName(ctx),
      action: line.action,
      subject: line.subject,
      detail: line.detail ?? {},
      requestId: ctx.requestId,
    },
  });
};
