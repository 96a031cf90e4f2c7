import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '../context.ts';

/** The diagnosis chosen last for a submission. */
export const latestDiagnosis = (tx: Tx, ctx: Context, submissionId: string) =>
  tx.diagnosis.findFirst({
    where: { academyId: ctx.academyId, submissionId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });
