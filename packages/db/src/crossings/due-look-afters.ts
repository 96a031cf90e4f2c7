import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'due_look_afters', text: 'SELECT * FROM crossing.due_look_afters($1, $2)' };

/** Students on trial or paying whose daily look has come due, the longest waiting first. */
export const dueLookAfters = (
  db: Pooled,
  input: { now: Date; limit: number },
): Promise<{ academyId: string; studentId: string }[]> => namedCall(db, statement, [input.now, input.limit]);
