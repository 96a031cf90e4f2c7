import { drillById } from '@ballfirst/library/drills';

const levels: readonly string[] = ['mild', 'firm', 'strong'];

/** One level more of exaggeration, where the drill has one that is sound for the age; else the same. */
export const firmer = (
  programme: { readonly drillId: string; readonly exaggeration: string },
  ageGroup: string,
): string => {
  const at = levels.indexOf(programme.exaggeration);
  const next = drillById(programme.drillId).exaggerations.find(
    ({ level, notFor = [] }) => level === levels[at + 1] && !notFor.some((group) => group === ageGroup),
  );
  return next?.level ?? programme.exaggeration;
};
