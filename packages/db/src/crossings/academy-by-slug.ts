import { namedCall, type Pooled } from '../named-call.ts';

/** What a visitor may see of an academy before signing in. */
export type AcademyFront = {
  id: string;
  slug: string;
  name: string;
  zone: string;
  promiseHours: number;
  trialDays: number;
  trialStarts: 'joining' | 'first-swing';
  priceWords: string;
  consentAge: number;
};

const statement = { name: 'academy_by_slug', text: 'SELECT * FROM crossing.academy_by_slug($1)' };

/** The academy behind `/join/<slug>`, or null. */
export const academyBySlug = async (db: Pooled, input: { slug: string }): Promise<AcademyFront | null> => {
  const [row] = await namedCall<AcademyFront>(db, statement, [input.slug]);
  return row ?? null;
};
