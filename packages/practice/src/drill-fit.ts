import { type EquipmentId, equipment, usualEquipment } from '@ballfirst/library/constants';
import type { Drill, Exaggeration, ExaggerationLevel, Station } from '@ballfirst/library/types';
import type { Means } from './means.ts';

const isEquipment = (id: string): id is EquipmentId => Object.hasOwn(equipment, id);

/** The station of a drill at the student's place, if there is one. */
export const stationFor = (drill: Drill, place: Means['place']): Station | undefined =>
  drill.stations.find((station) => station.place === place);

/** Why a student cannot do a drill, in words for a coach; null: it fits. Safety comes first. */
export const whyNot = (drill: Drill, means: Means): string | null => {
  if (drill.cautions.length === 0) return 'Has no cautions yet.';
  const hurts = drill.notWith.find((pain) => means.pains.includes(pain));
  if (hurts !== undefined) return `Not with ${hurts.replaceAll('-', ' ')}.`;
  const station = stationFor(drill, means.place);
  if (station === undefined) return `No station for ${means.place}.`;
  const has = means.equipment ?? usualEquipment;
  const without = means.balls === 0 ? station.needs.filter((need) => need !== 'balls') : station.needs;
  const missing = without.find((need) => isEquipment(need) && !has.includes(need));
  if (missing !== undefined && isEquipment(missing)) return `Needs ${equipment[missing]}.`;
  return null;
};

const strength: Readonly<Record<Exaggeration, number>> = { mild: 0, firm: 1, strong: 2 };

/** The strongest level that is not beyond what is wanted and is sound for the student's age. */
export const exaggerationFor = (drill: Drill, means: Means, wanted: Exaggeration): Exaggeration => {
  const sound = (level: ExaggerationLevel): boolean =>
    strength[level.level] <= strength[wanted] && !(level.notFor ?? []).includes(means.ageGroup);
  const levels = drill.exaggerations.filter(sound).map(({ level }) => level);
  return levels.sort((a, b) => strength[b] - strength[a])[0] ?? 'mild';
};
