import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import type { InboxItem } from '@ballfirst/contracts/http/inbox';

type Block = InboxItem['block'];

/** By when a swing is to be answered, on the academy's own calendar; pain that nobody has read stands above all. */
export const blockOf = (of: {
  readonly pain: string;
  readonly painSeenAt: Date | null;
  readonly answerBy: Date;
  readonly now: Date;
  readonly zone: string;
}): Block => {
  const { answerBy, now, zone } = of;
  if (of.pain !== 'none' && of.painSeenAt === null) return 'pain';
  if (answerBy <= now) return 'late';
  const today = localDate(now, zone);
  const due = localDate(answerBy, zone);
  if (due === today) {
    return answerBy <= localDueInstant({ zone, localDate: today, localTime: '12:00' })
      ? 'before-noon'
      : 'today';
  }
  return due === addDays(today, 1) ? 'tomorrow' : 'later';
};
