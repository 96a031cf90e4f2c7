import type { InboxItem } from '@ballfirst/contracts/http/inbox';
import type { InboxRow } from '@ballfirst/db/reads/inbox-page';
import { mediaPath } from '../clips/keys.ts';
import { blockOf, type DayEdges } from './block-of.ts';

const claimOf = (row: InboxRow): InboxItem['claim'] => {
  const { claimedBy, claimedByName, claimExpiresAt, handedByName, handedWhy } = row;
  if (claimedBy === null || claimedByName === null || claimExpiresAt === null) return null;
  const handed = handedByName === null || handedWhy === null ? null : { by: handedByName, why: handedWhy };
  return { membershipId: claimedBy, name: claimedByName, expiresAt: claimExpiresAt, handed };
};

const lastOf = (row: InboxRow): InboxItem['last'] => {
  const { programmeId, cause, drillId, rung, programmeStatus, lastVerdict } = row;
  if (programmeId === null || cause === null || drillId === null || rung === null || programmeStatus === null)
    return null;
  return { id: programmeId, cause, drillId, rung, status: programmeStatus, lastVerdict };
};

const common = (row: InboxRow, edges: DayEdges) => ({
  id: row.id,
  student: {
    id: row.studentId,
    name: row.studentName,
    standing: row.standing,
    trialDay: row.trialDay,
    trialEndsAt: row.trialEndsAt,
  },
  reasons: row.reasons,
  raisedAt: row.raisedAt,
  answerBy: row.answerBy,
  block: blockOf({ pain: row.pain, painSeenAt: row.painSeenAt, answerBy: new Date(row.answerBy) }, edges),
  claim: claimOf(row),
  last: lastOf(row),
});

/** A row of the inbox as the contract says it, with its block by the academy's own days; a question with its reply. */
export const inboxItemOf = (
  row: InboxRow,
  edges: DayEdges,
  repliesAsked: ReadonlyMap<string, string>,
): InboxItem => {
  const shown = common(row, edges);
  switch (row.kind) {
    case 'swing':
      // Both are never null in the table of submissions; only a concern has none.
      if (row.club === null || row.tally === null) throw new TypeError('A swing without club or tally.');
      return {
        ...shown,
        kind: 'swing',
        club: row.club,
        // A swing that waits has a clip; one that lost it is shown as the view we ask for first.
        view: row.view ?? 'face-on',
        swingLength: row.swingLength ?? 'full',
        leadFault: row.leadFault,
        tally: row.tally,
        note: row.note,
        pain: row.pain,
        painSeenAt: row.painSeenAt,
        poster: row.posterClipId === null ? null : mediaPath(row.posterClipId, 'poster.jpg'),
      };
    case 'pain':
      return { ...shown, kind: 'pain', pain: row.pain === 'worse' ? 'worse' : 'new' };
    case 'question':
      return { ...shown, kind: 'question', words: row.note, replyId: repliesAsked.get(row.id) ?? row.id };
    default:
      return { ...shown, kind: row.kind };
  }
};
