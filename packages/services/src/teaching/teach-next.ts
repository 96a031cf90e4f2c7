import { causes } from '@ballfirst/library/causes';
import { everyDrill } from '@ballfirst/library/cautions';
import { drills } from '@ballfirst/library/drills';
import type { Reply } from '../operation-types.ts';

type Lately = Reply<'readFaultsLately'>;

/** Fewer share a cause by chance; from three on it is worth an evening for all. Common practice, no source. */
const fewest = 3;

/** In order of preference; an evening has room for no more. */
const drillsAtMost = 3;

/** Said to a group: hands and sides of both kinds stand in it. */
const forAll = (sentence: string): string =>
  sentence.replaceAll('{lead}', 'lead').replaceAll('{trail}', 'trail');

/** The cause that most students share and the drills that mend it; null before three share one. */
export const teachNext = (span: Lately['week']): Lately['teachNext'] => {
  const found = span.causes.find(({ students }) => students >= fewest);
  const cause = causes.find(({ id }) => id === found?.id);
  if (found === undefined || cause === undefined) return null;
  const given = cause.drills
    .flatMap((id) => drills.filter((drill) => drill.id === id))
    .slice(0, drillsAtMost);
  return {
    cause: cause.id,
    name: cause.name,
    ...{ students: found.students, of: span.causeStudents, days: span.days },
    say: forAll(cause.forStudent),
    drills: given.map(({ id, name, purpose }) => ({ id, name, purpose: forAll(purpose) })),
    cautions: [...new Set([...everyDrill, ...given.flatMap(({ cautions }) => cautions.map(forAll))])],
  };
};
