import { Tally } from '@ballfirst/contracts/words';
import type { Tx } from '@ballfirst/db/with-academy';
import { causes } from '@ballfirst/library/causes';
import { drills } from '@ballfirst/library/drills';
import { faultById } from '@ballfirst/library/faults';
import type { PhraseValues } from '@ballfirst/practice/fill-phrase';
import { phraseValues } from '@ballfirst/practice/phrase-values';
import type { Context } from '../context.ts';
import type { SentReply } from '../practice/find-sent-reply.ts';
import { faultOf } from '../review/fault-of.ts';
import { groundOf } from '../review/ground-of.ts';

const drillNameOf = (plan: unknown): string | null => {
  const id = typeof plan === 'object' && plan !== null && 'drillId' in plan ? plan.drillId : null;
  return drills.find((drill) => drill.id === id)?.name ?? null;
};

/** What the words of a sent reply may have told of its own player and swing. */
export const valuesOfReply = async (
  tx: Tx,
  ctx: Context,
  reply: SentReply,
  player: string,
): Promise<PhraseValues> => {
  const { academyId } = ctx;
  const { submission } = reply;
  const fault = faultOf(null, { ...submission, hand: submission.student.hand });
  const tally: Readonly<Record<string, unknown>> = Tally.parse(submission.tally);
  const count = tally[fault];
  const measured = await tx.measurement.findMany({
    where: { academyId, submissionId: reply.submissionId },
  });
  return phraseValues({
    player,
    units: submission.student.units === 'imperial' ? 'imperial' : 'metric',
    club: submission.club,
    fault: faultById(fault).studentName.toLowerCase(),
    count: typeof count === 'number' ? count : null,
    balls: Tally.parse(submission.tally).balls,
    cause: causes.find(({ id }) => id === reply.cause)?.name ?? null,
    drill: drillNameOf(reply.plan),
    readings: measured.map((row) => ({ ...row, band: { low: row.bandLow, high: row.bandHigh } })),
    ground: await groundOf(tx, ctx, reply.submissionId),
  });
};
