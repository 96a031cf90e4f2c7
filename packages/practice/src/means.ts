import type { EquipmentId } from '@ballfirst/library/constants';
import type { AgeGroup, PainId, Place } from '@ballfirst/library/types';

/**
 * What a student has to practise with. `minutes` a day, `balls` a session; absent equipment or balls: what every student is
 * taken to have.
 */
export type Means = {
  readonly place: Place;
  readonly daysPerWeek: number;
  readonly minutes: number;
  readonly balls?: number;
  readonly equipment?: readonly EquipmentId[];
  readonly pains: readonly PainId[];
  readonly ageGroup: AgeGroup;
};
