import { ProblemError } from '@ballfirst/contracts/problems';
import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { drillById } from '@ballfirst/library/drills';
import type { AgeGroup, Drill, Exaggeration, PainId, Place, Rung } from '@ballfirst/library/types';
import { exaggerationFor, stationFor, whyNot } from '@ballfirst/practice/drill-fit';
import { ladderWith } from '@ballfirst/practice/ladder-at';

export type Planned = {
  readonly drillId: string;
  readonly place: Place;
  readonly exaggeration: Exaggeration;
  readonly weeklyMinutes: number;
  readonly second?: { readonly drillId: string; readonly minutes: number } | null;
};
export type Built = {
  readonly drill: Drill;
  readonly exaggeration: Exaggeration;
  readonly firstRung: Rung;
  readonly ballsAtMost: number;
};
export type BuiltFor = {
  readonly ageGroup: AgeGroup;
  readonly pains: readonly PainId[];
  /** At hand a session; null: not told. */
  readonly balls: number | null;
};

/** What a coach plans with is fetched: only place, pain and age can rule a drill out here. */
const everything = Object.keys(equipment) as EquipmentId[];

const refused = (path: string, message: string): ProblemError =>
  new ProblemError('bad-request', message, [{ path, message }]);

/** @throws ProblemError bad-request when the drill does not fit; wrong-state for one without cautions */
const fitting = (drillId: string, path: string, { place }: Planned, student: BuiltFor) => {
  const drill = drillById(drillId);
  // Nothing is prescribed without its cautions, whatever the library says.
  if (drill.cautions.length === 0) {
    throw new ProblemError(
      'wrong-state',
      'This drill has no cautions yet, so it cannot be given to a student.',
    );
  }
  const means = {
    ...{ place, daysPerWeek: 3, minutes: drill.minutes, equipment: everything },
    ...{ pains: student.pains, ageGroup: student.ageGroup },
  };
  const why = whyNot(drill, means);
  const [firstRung] = ladderWith(drill, place, student.balls ?? undefined);
  if (why !== null || firstRung === undefined) {
    throw refused(path, `${drill.name} does not fit: ${why ?? 'it needs balls.'}`);
  }
  return { drill, firstRung, means };
};

/** A drill beside the first works on the same cause, or sets up without a ball: never on a second movement. */
const supports = (second: Drill, first: Drill): boolean =>
  second.id !== first.id &&
  (second.causes.some((cause) => first.causes.includes(cause)) || second.ladder.every(({ ball }) => !ball));

/**
 * The programme a coach's plan comes to for this student: rungs that are sound at the place, no more exaggeration than is
 * sound for the age, nothing that strains what hurts.
 * @throws ProblemError bad-request when a drill does not fit; wrong-state for a drill without cautions
 */
export const buildProgramme = (plan: Planned, student: BuiltFor): Built => {
  const { drill, firstRung, means } = fitting(plan.drillId, 'plan.drillId', plan, student);
  if (plan.second !== null && plan.second !== undefined) {
    const second = fitting(plan.second.drillId, 'plan.second', plan, student);
    if (!supports(second.drill, drill)) {
      throw refused('plan.second', `${second.drill.name} works on another movement: one at a time.`);
    }
  }
  const sound = stationFor(drill, plan.place)?.ballsAtMost ?? drill.ballsAtMost;
  return {
    drill,
    firstRung,
    exaggeration: exaggerationFor(drill, means, plan.exaggeration),
    ballsAtMost: Math.min(sound, student.balls ?? Number.POSITIVE_INFINITY),
  };
};
