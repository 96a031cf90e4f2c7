import { addDays, localDate } from '@ballfirst/calendar/local-date';
import { localDueInstant } from '@ballfirst/calendar/local-due-instant';
import type { InboxItem } from '@ballfirst/contracts/http/inbox';

type Block = InboxItem['block'];

/** Where the days of an academy change, as instants: reckoned once a page, not once a row. */
export type DayEdges = {
  readonly now: Date;
  readonly noon: Date;
  readonly tomorrow: Date;
  readonly dayAfter: Date;
};

export const dayEdges = (now: Date, zone: string): DayEdges => {
  const today = localDate(now, zone);
  const at = (days: number, localTime: string): Date =>
    localDueInstant({ zone, localDate: addDays(today, days), localTime });
  return { now, noon: at(0, '12:00'), tomorrow: at(1, '00:00'), dayAfter: at(2, '00:00') };
};

/** By when a swing is to be answered, on the academy's own calendar; pain that nobody has read stands above all. */
export const blockOf = (
  of: { readonly pain: string; readonly painSeenAt: Date | string | null; readonly answerBy: Date },
  edges: DayEdges,
): Block => {
  const { answerBy } = of;
  if (of.pain !== 'none' && of.painSeenAt === null) return 'pain';
  if (answerBy <= edges.now) return 'late';
  if (answerBy < edges.tomorrow) return answerBy <= edges.noon ? 'before-noon' : 'today';
  return answerBy < edges.dayAfter ? 'tomorrow' : 'later';
};
