import {
  AgeGroup,
  Club,
  Curve,
  Hand,
  Lie,
  Outcome,
  Pain,
  Standing,
  StartLine,
  SubmissionStatus,
  Tally,
  Typical,
} from '@ballfirst/contracts/words';
import { clipOf } from '../clips/clip-of.ts';
import type { Reply } from '../operation-types.ts';
import type { SubmissionRow } from '../rows.ts';

const iso = (at: Date | null): string | null => at?.toISOString() ?? null;

/** The claim on a submission; one that has run out is none. */
export const claimOf = (row: SubmissionRow, now: Date): Reply<'readSubmission'>['claim'] => {
  const { claimant, claimExpiresAt } = row;
  if (claimant === null || claimExpiresAt === null || claimExpiresAt <= now) return null;
  return { membershipId: claimant.id, name: claimant.name, expiresAt: claimExpiresAt.toISOString() };
};

/** A submission as the contract says it. */
export const submissionOf = (row: SubmissionRow, now: Date): Reply<'readSubmission'> => ({
  id: row.id,
  student: {
    id: row.student.id,
    name: row.student.membership.name,
    hand: Hand.parse(row.student.hand),
    ageGroup: AgeGroup.parse(row.student.ageGroup),
    standing: Standing.parse(row.student.standing),
    trialStartedAt: iso(row.student.trialStartedAt),
    trialEndsAt: iso(row.student.trialEndsAt),
  },
  status: SubmissionStatus.parse(row.status),
  club: Club.parse(row.club),
  lie: Lie.parse(row.lie),
  tally: Tally.parse(row.tally),
  leadFault: Outcome.nullable().parse(row.leadFault),
  startLine: StartLine.parse(row.startLine),
  curve: Curve.parse(row.curve),
  typical: Typical.parse(row.typical),
  note: row.note,
  pain: Pain.parse(row.pain),
  painNote: row.painNote,
  painSeenAt: iso(row.painSeenAt),
  sentAt: row.sentAt.toISOString(),
  answerBy: row.answerBy.toISOString(),
  claim: claimOf(row, now),
  clips: row.clips.map(clipOf),
  replyId: row.reply?.status === 'sent' ? row.reply.id : null,
  answeredAt: iso(row.answeredAt),
  version: row.version,
});
