import { namedCall, type Pooled } from '../named-call.ts';

export type DueCheckIn = { academyId: string; checkInId: string; studentId: string; dueAt: Date };

const statement = { name: 'due_check_ins', text: 'SELECT * FROM crossing.due_check_ins($1, $2)' };

/** Scheduled check-ins whose instant has come, earliest first. */
export const dueCheckIns = (db: Pooled, input: { now: Date; limit: number }): Promise<DueCheckIn[]> =>
  namedCall<DueCheckIn>(db, statement, [input.now, input.limit]);
