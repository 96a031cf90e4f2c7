import { trialDay } from '@ballfirst/progress/trial-day';

/** Which day of the trial it is on the student's calendar; null for one who is on none, or whose trial has not begun. */
export const trialDayOf = (
  student: { readonly standing: string; readonly trialStartedAt: Date | null; readonly zone: string },
  now: Date,
): number | null =>
  student.standing === 'trial' && student.trialStartedAt !== null
    ? trialDay(student.trialStartedAt, now, student.zone)
    : null;
