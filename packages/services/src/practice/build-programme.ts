import { ProblemError } from '@ballfirst/contracts/problems';
import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { drillById } from '@ballfirst/library/drills';
import type { AgeGroup, Drill, Exaggeration, Place, Rung } from '@ballfirst/library/types';
import { exaggerationFor, whyNot } from '@ballfirst/practice/drill-fit';
import { ladderAt } from '@ballfirst/practice/programme';

export type Planned = {
  readonly drillId: string;
  readonly place: Place;
  readonly exaggeration: Exaggeration;
  readonly weeklyMinutes: number;
};
export type Built = {
  readonly drill: Drill;
  readonly exaggeration: Exaggeration;
  readonly firstRung: Rung;
};

/** What a coach plans with is fetched: only place, pain and age can rule a drill out here. */
const everything = Object.keys(equipment) as EquipmentId[];

/**
 * The programme a coach's plan comes to for this student: rungs that are sound at the place, no more exaggeration than is
 * sound for the age.
 * @throws ProblemError bad-request when the drill does not fit; wrong-state for a drill without cautions
 */
export const buildProgramme = (plan: Planned, student: { readonly ageGroup: AgeGroup }): Built => {
  const drill = drillById(plan.drillId);
  // Nothing is prescribed without its cautions, whatever the library says.
  if (drill.cautions.length === 0) {
    throw new ProblemError(
      'wrong-state',
      'This drill has no cautions yet, so it cannot be given to a student.',
    );
  }
  const means = {
    place: plan.place,
    daysPerWeek: 3,
    minutes: drill.minutes,
    equipment: everything,
    pains: [],
    ageGroup: student.ageGroup,
  };
  const why = whyNot(drill, means);
  const [firstRung] = ladderAt(drill, plan.place);
  if (why !== null || firstRung === undefined) {
    const message = `${drill.name} does not fit: ${why ?? 'it has no steps for this place.'}`;
    throw new ProblemError('bad-request', message, [{ path: 'plan.drillId', message }]);
  }
  return { drill, firstRung, exaggeration: exaggerationFor(drill, means, plan.exaggeration) };
};
