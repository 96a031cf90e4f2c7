import { AgeGroup } from '@ballfirst/contracts/words';
import type { Student } from '@ballfirst/db/generated/client';
import { type EquipmentId, equipment } from '@ballfirst/library/constants';
import { type PainId, type Place, pains, places } from '@ballfirst/library/types';
import type { Means } from '@ballfirst/practice/means';

/** What is taken where a student said nothing: common practice, no source. */
const usual = { daysPerWeek: 3, minutes: 20 } as const;

const isEquipment = (id: string): id is EquipmentId => Object.hasOwn(equipment, id);
const isPain = (id: string): id is PainId => pains.some((one) => one === id);

/** Where a swing was made is where it is practised, unless the student said otherwise. */
const placeOf = (place: string | null, lie: string): Place =>
  places.find((one) => one === place) ?? (lie === 'mat' || lie === 'net' ? 'mat' : 'grass');

/** What a student has to practise with, as told; what was not told is what students usually have. */
export const meansFor = (
  student: Pick<
    Student,
    'place' | 'daysPerWeek' | 'minutesPerDay' | 'balls' | 'equipment' | 'pains' | 'ageGroup'
  >,
  lie: string,
): Means => {
  const has = student.equipment.filter(isEquipment);
  return {
    place: placeOf(student.place, lie),
    daysPerWeek: student.daysPerWeek ?? usual.daysPerWeek,
    minutes: student.minutesPerDay ?? usual.minutes,
    ...(student.balls === null ? {} : { balls: student.balls }),
    ...(has.length === 0 ? {} : { equipment: has }),
    pains: student.pains.filter(isPain),
    ageGroup: AgeGroup.parse(student.ageGroup),
  };
};
