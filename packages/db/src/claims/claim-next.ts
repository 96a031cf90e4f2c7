import { newId } from '../ids.ts';
import type { InboxKind } from '../reads/inbox-page.ts';
import type { Tx } from '../with-academy.ts';

/**
 * Takes the first row that nobody holds, with its audit row and its event; null when there is none. Rows that others
 * are taking at this moment are passed over, never waited for.
 */
export const claimNextRow = async (
  tx: Tx,
  it: {
    academyId: string;
    membershipId: string;
    fault: string | null;
    now: Date;
    expiresAt: Date;
    requestId: string;
  },
): Promise<{ kind: InboxKind; id: string } | null> => {
  const [row] = await tx.$queryRaw<{ kind: InboxKind; id: string }[]>`
    SELECT kind, id FROM public.claim_next(${it.academyId}::uuid, ${it.membershipId}::uuid, ${it.fault}::text,
      ${it.now}::timestamptz, ${it.expiresAt}::timestamptz, ${newId()}::uuid, ${newId()}::uuid, ${it.requestId})`;
  return row ?? null;
};
