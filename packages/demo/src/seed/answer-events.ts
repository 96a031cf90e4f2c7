import { localDate } from '@ballfirst/calendar/local-date';
import { weekOf } from '@ballfirst/calendar/week-of';
import type { Tx } from '@ballfirst/db/with-academy';
import type { Context } from '@ballfirst/services/context';
import { scheduleCheckIn } from '@ballfirst/services/follow-ups/schedule-check-in';
import { raisePain } from '@ballfirst/services/inbox/raise-pain';
import { rollUpWeek } from '@ballfirst/services/roll-ups/roll-up-week';

type Past = { readonly tx: Tx; system(at: Date): Context };
type Told = { id: string; kind: string; payload: Readonly<Record<string, string>>; createdAt: Date };

/**
 * Does what the worker would have done about the events of the open transaction, except for the letters: nobody is
 * written to today about what happened weeks ago. The events leave with the commit as sent, so no worker sees them.
 * @returns whether there were any: their answers may be events again
 */
export const answerEvents = async (past: Past, academyId: string): Promise<boolean> => {
  const { tx } = past;
  const events = await tx.$queryRaw<Told[]>`
    SELECT o.id, o.kind, o.payload, o.created_at AS "createdAt" FROM system.outbox o
    WHERE o.academy_id = ${academyId}::uuid AND o.sent_at IS NULL
      AND o.xmin::text = (pg_current_xact_id()::xid)::text
    ORDER BY o.created_at, o.id`;
  const last = events.at(-1)?.createdAt;
  if (last === undefined) return false;
  for (const { kind, id: eventId, payload, createdAt } of events) {
    if (kind !== 'reply.sent') continue;
    const input = { eventId, replyId: payload.replyId ?? '' };
    await scheduleCheckIn({ ctx: past.system(createdAt), input });
  }
  const weeks = new Set([
    ...(await practised(past, academyId, events)),
    ...(await swung(past, academyId, events)),
  ]);
  for (const key of weeks) {
    const [studentId = '', week = ''] = key.split(' ');
    await rollUpWeek({ ctx: past.system(last), input: { studentId, week } });
  }
  const ids = events.map(({ id }) => id);
  await tx.$queryRaw`SELECT crossing.mark_outbox_sent(${ids}::uuid[], ${last}::timestamptz)::int`;
  return true;
};

const subjectsOf = (events: readonly Told[], kind: string, name: string): Map<string, Told> =>
  new Map(events.filter((it) => it.kind === kind).map((it) => [it.payload[name] ?? '', it]));

/** A pain told while practising comes before the coaches. @returns weeks that have to be counted, by student */
const practised = async (past: Past, academyId: string, events: readonly Told[]): Promise<string[]> => {
  const logged = subjectsOf(events, 'practice.logged', 'entryId');
  if (logged.size === 0) return [];
  const entries = await past.tx.practiceEntry.findMany({
    where: { academyId, id: { in: [...logged.keys()] } },
    select: { id: true, studentId: true, localDate: true, pain: true },
  });
  for (const { id: entryId, pain } of entries) {
    const event = logged.get(entryId);
    if (pain === 'none' || event === undefined) continue;
    await raisePain({ ctx: past.system(event.createdAt), input: { eventId: event.id, entryId } });
  }
  return entries.map((it) => `${it.studentId} ${weekOf(it.localDate)}`);
};

const swung = async (past: Past, academyId: string, events: readonly Told[]): Promise<string[]> => {
  const sent = subjectsOf(events, 'submission.sent', 'submissionId');
  if (sent.size === 0) return [];
  const swings = await past.tx.submission.findMany({
    where: { academyId, id: { in: [...sent.keys()] } },
    select: {
      studentId: true,
      sentAt: true,
      student: { select: { membership: { select: { zone: true } } } },
    },
  });
  return swings.map((it) => `${it.studentId} ${weekOf(localDate(it.sentAt, it.student.membership.zone))}`);
};
