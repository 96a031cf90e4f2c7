import { namedCall, type Pooled } from '../named-call.ts';

export type DueTrialEnd = { academyId: string; studentId: string; trialEndsAt: Date };

const statement = { name: 'due_trial_ends', text: 'SELECT * FROM crossing.due_trial_ends($1, $2)' };

/** Students still on trial after its end, earliest first. */
export const dueTrialEnds = (db: Pooled, input: { now: Date; limit: number }): Promise<DueTrialEnd[]> =>
  namedCall<DueTrialEnd>(db, statement, [input.now, input.limit]);
