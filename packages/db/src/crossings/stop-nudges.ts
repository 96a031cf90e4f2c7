import { namedCall, type Pooled } from '../named-call.ts';

const statement = { name: 'stop_nudges', text: 'SELECT crossing.stop_nudges($1, $2) AS stopped' };

/** Ends the reminders of the student in whose letters this token stands. @returns false for a token nobody has */
export const stopNudges = async (db: Pooled, input: { token: string; now: Date }): Promise<boolean> => {
  const [row] = await namedCall<{ stopped: boolean }>(db, statement, [input.token, input.now]);
  return row?.stopped ?? false;
};
