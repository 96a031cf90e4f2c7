import { PracticeMeans } from '@ballfirst/contracts/http/means';
import type { Student } from '@ballfirst/db/generated/client';

/** A student's means as the contract says them. */
export const meansOf = (row: Student): PracticeMeans =>
  PracticeMeans.parse({
    usualMiss: row.usualMiss,
    daysPerWeek: row.daysPerWeek,
    minutesPerDay: row.minutesPerDay,
    place: row.place,
    goal: row.goal,
    body: row.bodyNote,
    bodyAgreed: row.bodyAgreedAt !== null,
    balls: row.balls,
    equipment: row.equipment,
    pains: row.pains,
  });
