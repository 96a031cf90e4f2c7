import { namedCall, type Pooled } from '../named-call.ts';

export type AcademyLine = { id: string; slug: string; name: string; zone: string };

const statement = { name: 'list_academies', text: 'SELECT * FROM crossing.list_academies()' };

/** Every academy, oldest first: for schedules, roll-ups and the operator. */
export const listAcademies = (db: Pooled): Promise<AcademyLine[]> =>
  namedCall<AcademyLine>(db, statement, []);
