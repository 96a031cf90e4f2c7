import { type InboxItem, Reason } from '@ballfirst/contracts/http/inbox';
import { Club, Outcome, Standing, SwingLength, Tally, View } from '@ballfirst/contracts/words';
import type { InboxRow } from '@ballfirst/db/reads/inbox-page';
import { z } from 'zod';
import { mediaPath } from '../clips/keys.ts';
import { trialDayOf } from '../students/trial-day-of.ts';
import { blockOf, type DayEdges } from './block-of.ts';
import type { Zones } from './kept-zones.ts';

const Reasons = z.array(Reason);

const claimOf = ({ claimedBy, claimedByName, claimExpiresAt }: InboxRow): InboxItem['claim'] =>
  claimedBy === null || claimedByName === null || claimExpiresAt === null
    ? null
    : { membershipId: claimedBy, name: claimedByName, expiresAt: claimExpiresAt.toISOString() };

const posterOf = ({ clips }: InboxRow): string | null => {
  const clip = clips.find(({ hasPoster }) => hasPoster);
  return clip === undefined ? null : mediaPath(clip.id, 'poster.jpg');
};

/** A row of the inbox as the contract says it: blocks by the academy's days, the day of a trial by the student's own. */
export const inboxItemOf = (
  row: InboxRow,
  at: { readonly edges: DayEdges; readonly zones: Zones },
): InboxItem => ({
  id: row.submissionId,
  kind: 'swing',
  student: {
    id: row.studentId,
    name: row.studentName,
    standing: Standing.parse(row.standing),
    trialDay: trialDayOf(
      { ...row, zone: at.zones.students.get(row.studentId) ?? at.zones.academy },
      at.edges.now,
    ),
    trialEndsAt: row.trialEndsAt?.toISOString() ?? null,
  },
  club: Club.parse(row.club),
  // A swing that waits has a clip; one that lost it is shown as the view we ask for first.
  view: View.parse(row.view ?? 'face-on'),
  swingLength: SwingLength.parse(row.swingLength ?? 'full'),
  leadFault: Outcome.nullable().parse(row.leadFault),
  tally: Tally.parse(row.tally),
  note: row.note,
  pain: row.pain,
  painSeenAt: row.painSeenAt?.toISOString() ?? null,
  reasons: Reasons.parse(row.reasons),
  answerBy: row.answerBy.toISOString(),
  block: blockOf(row, at.edges),
  claim: claimOf(row),
  poster: posterOf(row),
  sentAt: row.sentAt.toISOString(),
});
