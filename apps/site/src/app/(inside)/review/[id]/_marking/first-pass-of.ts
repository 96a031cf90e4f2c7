import { firstPasses } from '@ballfirst/swing/first-pass';
import type { Place } from '@ballfirst/swing/place';

/** The marks that are asked for, one click each: by the miss, face-on only. */
export const firstPassOf = (fault: string | null, view: string): readonly Place[] => {
  if (view !== 'face-on') return [];
  return fault === 'thin' || fault === 'topped' ? firstPasses[fault] : firstPasses.fat;
};
