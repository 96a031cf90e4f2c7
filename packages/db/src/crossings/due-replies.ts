import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'due_replies', text: 'SELECT * FROM crossing.due_replies($1, $2)' };

/** Replies whose half minute for second thoughts is over, the longest waiting first. */
export const dueReplies = (
  db: Pooled,
  input: { now: Date; limit: number },
): Promise<{ academyId: string; replyId: string }[]> => namedCall(db, statement, [input.now, input.limit]);
