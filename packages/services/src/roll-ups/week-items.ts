import { localDate } from '@ballfirst/calendar/local-date';
import { Pain, Tally } from '@ballfirst/contracts/words';
import type { PracticeEntry, Submission } from '@ballfirst/db/generated/client';
import type { LoggedEntry, SentSwing } from '@ballfirst/progress/week-row';

/** A practice entry as the roll-up reads it. */
export const loggedEntry = (row: PracticeEntry): LoggedEntry => ({
  studentId: row.studentId,
  localDate: row.localDate,
  balls: row.balls,
  clean: row.clean,
  pain: Pain.parse(row.pain),
});

/** A submission as the roll-up reads it: sent on the day that the student's own calendar showed. */
export const sentSwing = (row: Submission, zone: string): SentSwing => ({
  studentId: row.studentId,
  localDate: localDate(row.sentAt, zone),
  tally: Tally.parse(row.tally),
});
