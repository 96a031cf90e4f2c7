import type { Tx } from '@ballfirst/db/with-academy';
import type { FaultId } from '@ballfirst/library/types';
import type { Context } from '../context.ts';
import type { SubmissionRow } from '../rows.ts';
import { faultOf } from './fault-of.ts';

/** The diagnosis chosen last for a submission. */
export const latestDiagnosis = (tx: Tx, ctx: Context, submissionId: string) =>
  tx.diagnosis.findFirst({
    where: { academyId: ctx.academyId, submissionId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
  });

/** The fault the evidence of a submission is read for. */
export const latestFault = async (tx: Tx, ctx: Context, row: SubmissionRow): Promise<FaultId> =>
  faultOf((await latestDiagnosis(tx, ctx, row.id))?.fault ?? null, { ...row, hand: row.student.hand });
