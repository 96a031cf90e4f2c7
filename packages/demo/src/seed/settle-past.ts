import { Envelope } from '@ballfirst/contracts/events';
import { markOutboxSent } from '@ballfirst/db/crossings/mark-outbox-sent';
import { type OutboxRow, takeOutbox } from '@ballfirst/db/crossings/take-outbox';
import type { Resources } from '@ballfirst/services/context';
import { scheduleCheckIn } from '@ballfirst/services/follow-ups/schedule-check-in';
import { rollUpEntry } from '@ballfirst/services/roll-ups/roll-up-entry';
import { rollUpSwing } from '@ballfirst/services/roll-ups/roll-up-swing';
import { systemContext } from './at-time.ts';

/** A check-in of the past was sent and answered in its own time; only one still to come is set. */
const checkInDays = 7;

/**
 * Does what the worker would have done about the events of the past, except for the letters: nobody is written to today
 * about what happened weeks ago.
 */
export const settlePast = async (resources: Resources, now: Date): Promise<void> => {
  for (;;) {
    const rows = await takeOutbox(resources.db, { limit: 500, now, retakeAfterSeconds: 60 });
    if (rows.length === 0) return;
    for (const row of rows) await settle(resources, row, now);
    await markOutboxSent(resources.db, { ids: rows.map((row) => row.id), now });
  }
};

const settle = async (resources: Resources, row: OutboxRow, now: Date): Promise<void> => {
  const { academyId, id: eventId, kind } = Envelope.parse(row);
  const ctx = systemContext(resources, academyId, row.createdAt);
  const payload = row.payload as Readonly<Record<string, string>>;
  const idOf = (name: string): string => payload[name] ?? '';
  if (kind === 'practice.logged') await rollUpEntry({ ctx, input: { entryId: idOf('entryId') } });
  if (kind === 'submission.sent') await rollUpSwing({ ctx, input: { submissionId: idOf('submissionId') } });
  const daysAgo = (now.getTime() - row.createdAt.getTime()) / 86_400_000;
  if (kind === 'reply.sent' && daysAgo < checkInDays - 1) {
    await scheduleCheckIn({ ctx, input: { eventId, replyId: idOf('replyId') } });
  }
};
