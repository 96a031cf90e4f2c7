import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'touch_session', text: 'SELECT crossing.touch_session($1, $2)' };

/** Moves the instant a session was last seen, forward only. Call it at most once a minute, not on every request. */
export const touchSession = async (db: Pooled, input: { sessionId: string; now: Date }): Promise<void> => {
  await namedCall(db, statement, [input.sessionId, input.now]);
};
