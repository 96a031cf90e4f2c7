import type { Drill } from '@ballfirst/library/types';
import type { Dose } from './benefit.ts';

export const leastMinutes = 10;
const minutesStep = 5;

/** 10, 15, … up to what the drill is written for and the day has left; ten minutes can always be found. */
const choices = (drill: Drill, left: number): readonly number[] => {
  const atMost = Math.min(left, Math.max(leastMinutes, drill.minutes));
  const found: number[] = [];
  for (let minutes = leastMinutes; minutes <= atMost; minutes += minutesStep) found.push(minutes);
  return found;
};

/**
 * The doses of a session that promise most, looked through one by one: one main drill and at most one more. The first of
 * several that promise the same stays.
 *
 * @param main - drills of which one has to be done, in order of preference
 * @param others - drills that may be added
 * @param minutes - of a day
 * @returns null when there is no main drill
 */
export const bestDoses = (
  main: readonly Drill[],
  others: readonly Drill[],
  minutes: number,
  benefit: (doses: readonly Dose[]) => number,
): readonly Dose[] | null => {
  const day = Math.max(leastMinutes, minutes);
  let best: { readonly doses: readonly Dose[]; readonly worth: number } | null = null;
  const offer = (doses: readonly Dose[]): void => {
    const worth = benefit(doses);
    if (best === null || worth > best.worth + 1e-12) best = { doses, worth };
  };
  for (const drill of main) {
    for (const dose of choices(drill, day)) {
      const first: Dose = { drillId: drill.id, minutes: dose };
      offer([first]);
      for (const second of [...main, ...others]) {
        if (second.id === drill.id) continue;
        for (const more of choices(second, day - dose)) offer([first, { drillId: second.id, minutes: more }]);
      }
    }
  }
  const found = best as { readonly doses: readonly Dose[] } | null;
  return found?.doses ?? null;
};
